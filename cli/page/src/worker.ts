// Runs the core beside the page, so that nothing it does can hold the page up. The script of the core stands before
// this one.
interface Core {
  allocateUTF8(text: string): number
  UTF8ToString(at: number): string
  _lumwright_ask(question: number): number
  _free(at: number): void
}
type Imports = Record<string, Record<string, (...args: never[]) => unknown>>
declare const lumwright_core: (options: object) => Promise<Core>

let core: Promise<Core> | undefined
function begin(program: WebAssembly.Module): Promise<Core> {
  return lumwright_core({
    instantiateWasm(imports: Imports, done: (instance: WebAssembly.Instance) => void) {
      void WebAssembly.instantiate(program, imports as WebAssembly.Imports).then(done)
      return {}
    }
  })
}
async function ask(question: object): Promise<string> {
  const there = await core!
  const asked = there.allocateUTF8(JSON.stringify(question))
  const answer = there._lumwright_ask(asked)
  const text = there.UTF8ToString(answer)
  there._free(asked)
  there._free(answer)
  return text
}
self.onmessage = async (event: MessageEvent<{ program?: WebAssembly.Module; id?: number; question?: object }>) => {
  const { program, id, question } = event.data
  if (program) core = begin(program)
  if (question)
    try {
      self.postMessage({ id, answer: await ask(question) })
    } catch (error) {
      self.postMessage({ id, failed: String(error) })
    }
}
