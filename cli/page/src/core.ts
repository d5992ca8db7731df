// The program in workers: one answers at once, the others take their time. Each works on one question; a newer one
// takes the place of one that waits.
import type { Questions, Reply } from './asked'

/// The worker was ended because it took too long, or fell over.
export class Stopped extends Error {}
/// A newer question has taken its place.
export class Dropped extends Error {}

interface Waiting {
  question: object
  seconds: number
  resolve: (answer: object) => void
  reject: (why: Error) => void
}

class Lane {
  private worker: Worker | undefined
  private running: Waiting | undefined
  private waiting: Waiting | undefined
  private timer = 0
  constructor(
    private readonly script: string,
    private readonly program: Promise<WebAssembly.Module>
  ) {}

  ask(question: object, seconds: number): Promise<object> {
    return new Promise((resolve, reject) => {
      this.waiting?.reject(new Dropped())
      this.waiting = { question, seconds, resolve, reject }
      void this.next()
    })
  }
  /// Whatever it works on is not wanted any more.
  drop(): void {
    this.waiting?.reject(new Dropped())
    this.waiting = undefined
    if (!this.running) return
    this.worker?.terminate()
    this.worker = undefined
    this.finished()?.reject(new Dropped())
  }
  private async next(): Promise<void> {
    if (this.running || !this.waiting) return
    this.running = this.waiting
    this.waiting = undefined
    const { question, seconds } = this.running
    try {
      const program = await this.program
      if (this.running?.question !== question) return void this.next() // dropped meanwhile
      const worker = (this.worker ??= this.begun(program))
      this.timer = window.setTimeout(() => this.end(`it took more than ${seconds} s and was ended`), seconds * 1000)
      worker.postMessage({ id: 0, question })
    } catch (error) {
      if (this.running?.question === question) this.end(`the program cannot run in this browser: ${String(error)}`)
    }
  }
  private begun(program: WebAssembly.Module): Worker {
    const worker = new Worker(this.script)
    worker.onmessage = ({ data }: MessageEvent<{ answer?: string; failed?: string }>) => {
      if (data.answer === undefined) return this.end(`it stopped: ${data.failed ?? ''}`)
      const done = this.finished()
      done?.resolve(JSON.parse(data.answer) as object)
      void this.next()
    }
    worker.onerror = event => this.end(`it stopped: ${event.message}`)
    worker.postMessage({ program })
    return worker
  }
  private finished(): Waiting | undefined {
    window.clearTimeout(this.timer)
    const done = this.running
    this.running = undefined
    return done
  }
  private end(why: string): void {
    this.worker?.terminate()
    this.worker = undefined
    this.finished()?.reject(new Stopped(why))
    void this.next()
  }
}

async function unpacked(): Promise<WebAssembly.Module> {
  const base64 = document.getElementById('program')!.textContent!.trim()
  const packed = Uint8Array.from(atob(base64), c => c.charCodeAt(0))
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))
  return WebAssembly.compile(await new Response(stream).arrayBuffer())
}

export class Core {
  private readonly quick: Lane
  private readonly slow: Lane
  private readonly work: Lane
  constructor() {
    const text = ['core', 'worker'].map(id => document.getElementById(id)!.textContent!).join('\n')
    const script = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }))
    const program = unpacked()
    this.quick = new Lane(script, program)
    this.slow = new Lane(script, program)
    this.work = new Lane(script, program)
  }
  dropSamples(): void {
    this.slow.drop()
  }
  /// On the lane that answers at once, on the one of samples, or on the one of what was asked for by a button.
  ask<Q extends keyof Questions>(
    what: Q,
    question: Questions[Q][0],
    lane: 'quick' | 'slow' | 'work' = 'quick',
    seconds = 5
  ): Promise<Reply<Questions[Q][1]>> {
    return this[lane].ask({ do: what, ...question }, seconds) as Promise<Reply<Questions[Q][1]>>
  }
}
