// What the page knows: the text, how it came about, what the program last said of it, and who is told of a change.
import type { Answered, Form, Refusal } from './asked'
import { Description } from './description'

export type Place = 'describe' | 'move' | 'make' | 'choose' | 'tune' | 'text'
export interface State {
  form: Form | undefined
  text: string
  name: string // of the file, without its ending
  place: Place
  answer: Answered | undefined
  stale: boolean // the answer is of an earlier text
  refusal: Refusal | undefined
  working: string // what goes on: "64 samples"; empty: nothing
  trouble: string // the worker was ended, a file could not be read
  beside: { text: string; answer: Answered | undefined } | undefined // the build that this one is compared with
  offered: string | undefined // a build kept by this browser, not taken up yet
  tuned: string // what a log has taught; empty: nothing
  units: string
  active: string // the key whose field has the focus
}
const most_steps = 200

export class Store {
  state: State = {
    form: undefined,
    text: '',
    name: 'build',
    place: 'describe',
    answer: undefined,
    stale: false,
    refusal: undefined,
    working: '',
    trouble: '',
    beside: undefined,
    offered: undefined,
    tuned: '',
    units: '',
    active: ''
  }
  description = Description.of('')
  private undone: string[] = []
  private done: string[] = []
  private last_edit = ''
  private readonly listeners = new Set<() => void>()
  private readonly edits = new Set<() => void>()

  listen(told: () => void): () => void {
    this.listeners.add(told)
    return () => this.listeners.delete(told)
  }
  /// Of the text, the units or what was tuned alone: whatever changes the answer.
  listenToEdits(told: () => void): void {
    this.edits.add(told)
  }
  set(change: Partial<State>): void {
    const before = this.state
    this.state = { ...before, ...change }
    for (const told of this.listeners) told()
    if ((['text', 'units', 'tuned'] as const).some(key => before[key] !== this.state[key]))
      for (const told of this.edits) told()
  }
  /// A change of the text; several in a row under one `edit` are undone together.
  edit(text: string, edit = ''): void {
    if (text === this.state.text) return
    if (edit === '' || edit !== this.last_edit) this.done = [...this.done.slice(-most_steps), this.state.text]
    this.last_edit = edit
    this.undone = []
    this.show(text)
  }
  type(key: string, typed: string): void {
    this.edit(this.description.with(key, typed), key)
  }
  /// Another build altogether.
  open(text: string, name: string): void {
    this.set({ name, beside: undefined, tuned: '', trouble: '' }) // first: the answer goes by the new name
    this.edit(text)
  }
  get canUndo(): boolean {
    return this.done.length > 0
  }
  get canRedo(): boolean {
    return this.undone.length > 0
  }
  undo(): void {
    this.step(this.done, this.undone)
  }
  redo(): void {
    this.step(this.undone, this.done)
  }

  private step(from: string[], to: string[]): void {
    const text = from.pop()
    if (text === undefined) return
    to.push(this.state.text)
    this.last_edit = ''
    this.show(text)
  }
  private show(text: string): void {
    this.description = Description.of(text)
    this.set({ text })
  }
}
