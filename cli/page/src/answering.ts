// Asks for the answer whenever the text changes: at once without samples, what is in sight before the pictures, then in
// more and more samples while the hand rests.
import { isRefusal, type Answered, type Questions, type Reply } from './asked'
import { Core, Dropped, Stopped } from './core'
import type { Store } from './store'

const samples = [64, 256, 1000]
const rest = 300 // ms without a change before samples are tried
const patience = 5 // s that an answer may take
type Question = Questions['answer'][0]
const in_sight: Question['parts'] = ['head']
const below: Question['parts'] = ['pictures', 'cautions', 'sketches']
const everything: Question['parts'] = [...in_sight, ...below, 'appendix']
const painted = (): Promise<void> =>
  new Promise(done => requestAnimationFrame(() => window.setTimeout(done))) // behind the frame that is drawn next
const long_patience = 20 // s that samples may take; a change of the text ends them at once

export class Answering {
  private version = 0
  private timer = 0
  constructor(
    private readonly store: Store,
    private readonly core: Core
  ) {
    store.listenToEdits(() => void this.changed())
  }
  private question(count: number, parts: Question['parts']): Question {
    const { text, name, tuned, units } = this.store.state
    return { text, name: `${name}.yaml`, tuned, units, samples: count, whole: count > 0, parts }
  }
  async changed(): Promise<void> {
    const version = ++this.version
    window.clearTimeout(this.timer)
    this.core.dropSamples()
    this.store.set({ stale: true, working: '' })
    if (!(await this.asked(0, in_sight, version))) return
    await painted()
    if (version !== this.version) return
    const answer = await this.asked(0, below, version)
    if (answer && version === this.version) this.timer = window.setTimeout(() => void this.samples(version), rest)
  }
  private async samples(version: number): Promise<void> {
    let each = 0 // seconds a sample took
    for (const count of samples) {
      if (version !== this.version) return
      if (each * count > 0.8 * long_patience) break // a slow machine is spared what it could not finish
      this.store.set({ working: `trying ${count} samples` })
      const begun = performance.now()
      if (!(await this.asked(count, everything, version))) break
      each = (performance.now() - begun) / 1000 / count
    }
    if (version === this.version) this.store.set({ working: '' })
  }
  private async asked(count: number, parts: Question['parts'], version: number): Promise<Answered | undefined> {
    try {
      const reply = await this.core.ask(
        'answer',
        this.question(count, parts),
        count > 0 ? 'slow' : 'quick',
        count > 0 ? long_patience : patience
      )
      return version === this.version ? this.take(reply) : undefined
    } catch (error) {
      if (error instanceof Stopped && version === this.version)
        this.store.set({ trouble: `No answer: ${error.message}.`, working: '' })
      else if (!(error instanceof Dropped || error instanceof Stopped)) throw error
      return undefined
    }
  }
  private take(reply: Reply<Answered>): Answered | undefined {
    if (isRefusal(reply)) {
      this.store.set({
        refusal: reply,
        working: '',
        trouble: reply.error ? `A mistake of the program's own: ${reply.error}` : ''
      })
      return undefined
    }
    const before = this.store.state.answer
    const { head = '', pictures = '', cautions = '' } = before?.parts ?? {} // until they follow; an appendix of before is dropped
    const answer = {
      ...reply,
      parts: { head, pictures, cautions, ...reply.parts },
      sketches: reply.sketches ?? before?.sketches ?? []
    }
    this.store.set({ answer, refusal: undefined, stale: false, trouble: '' })
    return reply
  }
}
