// Asks for the answer whenever the text changes: at once without samples, then in more and more of them while the
// hand rests.
import { isRefusal, type Answered, type Reply } from './asked'
import { Core, Dropped, Stopped } from './core'
import type { Store } from './store'

const samples = [64, 256, 1000]
const rest = 300 // ms without a change before samples are tried
const patience = 5 // s that an answer may take
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
  private question(count: number): {
    text: string
    name: string
    tuned: string
    units: string
    samples: number
    whole: boolean
  } {
    const { text, name, tuned, units } = this.store.state
    return { text, name: `${name}.yaml`, tuned, units, samples: count, whole: count > 0 }
  }
  async changed(): Promise<void> {
    const version = ++this.version
    window.clearTimeout(this.timer)
    this.core.dropSamples()
    this.store.set({ stale: true, working: '' })
    const answer = await this.asked(0, version)
    if (answer && version === this.version) this.timer = window.setTimeout(() => void this.samples(version), rest)
  }
  private async samples(version: number): Promise<void> {
    let each = 0 // seconds a sample took
    for (const count of samples) {
      if (version !== this.version) return
      if (each * count > 0.8 * long_patience) break // a slow machine is spared what it could not finish
      this.store.set({ working: `trying ${count} samples` })
      const begun = performance.now()
      if (!(await this.asked(count, version))) break
      each = (performance.now() - begun) / 1000 / count
    }
    if (version === this.version) this.store.set({ working: '' })
  }
  private async asked(count: number, version: number): Promise<Answered | undefined> {
    try {
      const reply = await this.core.ask(
        'answer',
        this.question(count),
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
    this.store.set({ answer: reply, refusal: undefined, stale: false, trouble: '' })
    return reply
  }
}
