// The core of the page under node: what its worker does in a browser.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'

export async function begun(page) {
  const folder = join(page, 'core')
  const core = await createRequire(import.meta.url)(join(folder, 'core.js'))({
    wasmBinary: readFileSync(join(folder, 'core.wasm'))
  })
  return question => {
    const asked = core.allocateUTF8(JSON.stringify(question)),
      answer = core._lumwright_ask(asked)
    const text = core.UTF8ToString(answer)
    core._free(asked)
    core._free(answer)
    return JSON.parse(text)
  }
}
