// Puts core, scripts, style and notices into one file: node bundle.mjs CORE_FOLDER NOTICES VERSION OUT.
import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'

const [folder, notices, version, out] = process.argv.slice(2)
const core = readFileSync(join(folder, 'core.js'), 'utf8')
const program = readFileSync(join(folder, 'core.wasm'))

async function bundled(entry) {
  const made = await build({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    write: false,
    legalComments: 'none',
    charset: 'utf8'
  })
  return made.outputFiles[0].text.trim()
}
/// The report's own style, asked of the program itself.
async function reportStyle() {
  const begun = await createRequire(import.meta.url)(join(folder, 'core.js'))({ wasmBinary: program })
  const question = begun.allocateUTF8('{"do": "style"}'),
    answer = begun._lumwright_ask(question)
  return JSON.parse(begun.UTF8ToString(answer)).css
}
function hash(text) {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`
}
/// A text that stands in a script element must not end it, nor begin a comment there.
function inScript(name, text) {
  if (/<\/script|<!--|<script/i.test(text)) throw new Error(`${name} would end its element`)
  return text
}
const css = await build({ entryPoints: ['src/page.css'], bundle: true, minify: true, write: false })
const style = (await reportStyle()) + css.outputFiles[0].text
const script = await bundled('src/main.tsx')
const parts = {
  version,
  style,
  'style-hash': hash(style),
  script: inScript('script', script),
  'script-hash': hash(script),
  core: inScript('core', core),
  worker: inScript('worker', await bundled('src/worker.ts')),
  program: gzipSync(program, { level: 9 }).toString('base64'),
  notices: inScript('notices', readFileSync(notices, 'utf8'))
}
const page = readFileSync('src/page.html', 'utf8').replace(/\{\{([a-z-]+)\}\}/g, (_, name) => parts[name])
writeFileSync(out, page)
console.log(`${out}: ${(Buffer.byteLength(page) / 1e6).toFixed(2)} MB`)
