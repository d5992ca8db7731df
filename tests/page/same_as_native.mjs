// The core answers as the native program does: examples and random builds with and without samples, and what is no
// description at all. node same_as_native.mjs PAGE PROGRAM BUILDS ROOT prints one line a failure.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { begun } from './core.mjs'

const [page, program, builds, root] = process.argv.slice(2)
const ask = await begun(page)
const failures = []
let compared = 0

/// Numbers within a share of the larger, or of what is nothing beside the numbers of its kind; all else to the letter.
function apart(one, other, path, share) {
  if (typeof one === 'number' && typeof other === 'number') {
    compared += 1
    const near = Math.abs(one - other) <= share * Math.max(Math.abs(one), Math.abs(other), 1e-4)
    return near ? [] : [`${path}: ${one} against ${other}`]
  }
  if (typeof one !== typeof other || one === null || other === null || typeof one !== 'object')
    return one === other ? [] : [`${path}: ${JSON.stringify(one)} against ${JSON.stringify(other)}`]
  const keys = new Set([...Object.keys(one), ...Object.keys(other)])
  return [...keys].flatMap(key =>
    apart(one[key], other[key], `${path}.${key}`, path.includes('.series') ? 1e-6 : share)
  )
}
function compare(file, samples, share) {
  const run = spawnSync(program, ['check', file, '--format', 'json', '--samples', String(samples), '--untuned'], {
    encoding: 'utf8'
  })
  if (run.status > 1) return failures.push(`${file}: the program leaves with ${run.status}: ${run.stderr}`)
  const answer = ask({ do: 'json', text: readFileSync(file, 'utf8'), name: file, samples })
  if (!answer.json) return failures.push(`${file}: the page has no answer: ${JSON.stringify(answer).slice(0, 300)}`)
  const differ = apart(JSON.parse(run.stdout), JSON.parse(answer.json), '', share)
  if (differ.length > 0)
    failures.push(`${file}, ${samples} samples: ${differ.length} differ: ${differ.slice(0, 3).join('; ')}`)
}
function refused(name, text) {
  const begin = performance.now()
  const answer = ask({ do: 'answer', text, name, samples: 0, parts: ['head', 'cautions', 'sketches'] })
  const took = performance.now() - begin
  if (answer.error !== undefined) failures.push(`${name}: a mistake of its own: ${answer.error}`)
  if (took > 5000) failures.push(`${name}: ${took} ms`)
  return answer
}

/// "1 1/2 in +- 0.001 in" -> 38.1, "13 mm" -> 13, "5" -> 5: only to be compared with others of its kind.
function size(text) {
  const [, whole, over, under, unit] = /^([\d.]+)?(?: ?(\d+)\/(\d+))? ?(in\b)?/.exec(
    text.replace(/^(\d+)\/(\d+)/, '0 $1/$2')
  )
  return (Number(whole) + (over ? over / under : 0)) * (unit ? 25.4 : 1)
}
/// The strongest lever first; the values of each rise, today's among them.
function levers(file) {
  const text = readFileSync(file, 'utf8')
  const { levers } = ask({ do: 'levers', text, tuned: '', units: '' })
  if (levers?.length !== 6) failures.push(`${file}: ${levers?.length} levers`)
  levers.forEach((lever, i) => {
    if (i > 0 && lever.effect > levers[i - 1].effect) failures.push(`${file}: ${lever.key} is stronger than the one before`)
    const sizes = lever.values.filter((_, at) => at !== lever.now).map(value => size(value.value))
    if (sizes.some(one => Number.isNaN(one))) failures.push(`${file}: ${lever.key}: ${lever.values.map(v => v.value)}`)
    if (sizes.some((one, at) => at > 0 && one <= sizes[at - 1]))
      failures.push(`${file}: ${lever.key} is not by size: ${sizes}`)
  })
}

const examples = join(root, 'examples')
const files = readdirSync(examples)
  .filter(f => f.endsWith('.yaml'))
  .map(f => join(examples, f))
for (const file of files) {
  compare(file, 0, 1e-9)
  levers(file)
  compare(file, 64, 1e-6) // a sample beside a limit, or a quantile between two, may fall on the other side
}
const folder = 'random'
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder)
if (spawnSync(builds, ['50', folder]).status !== 0) throw new Error('no random builds')
for (const file of readdirSync(folder)) compare(join(folder, file), 0, 1e-9)
if (compared < 5_000) failures.push(`only ${compared} numbers were compared`)

const corpus = join(root, 'tests/fuzz/corpus')
for (const kind of readdirSync(corpus))
  for (const file of readdirSync(join(corpus, kind)))
    refused(`${kind}/${file}`, readFileSync(join(corpus, kind, file), 'latin1'))
const deep = '['.repeat(20_000),
  wide =
    'a: &a [x, x]\n' +
    [...'bcdefghij'].map((c, i) => `${c}: &${c} [*${'abcdefghi'[i]}, *${'abcdefghi'[i]}]`).join('\n')
for (const [name, text] of Object.entries({
  deep,
  wide,
  empty: '',
  long: 'name: ' + 'x'.repeat(1_500_000),
  markup: 'name: "<img src=x onerror=alert(1)>"',
  twice: 'fan: {}\nfan: {}',
  tab: 'fan:\n\tkind: axial',
  nul: 'name: a\0b',
  colons: ':'.repeat(5000),
  bang: '!!python/object:x {}'
})) {
  const answer = refused(name, text)
  if (name !== 'empty' && name !== 'markup' && !answer.faults?.length) failures.push(`${name}: no fault`)
  if (name === 'markup' && /<img/.test(JSON.stringify([answer.parts, answer.sketches]))) failures.push('markup of a name is markup on the page')
}
writeFileSync('compared.txt', `${compared} numbers\n`)
for (const line of failures) console.log(line)
console.log(`${compared} numbers compared, ${failures.length} failures, ${basename(page)}`)
process.exitCode = failures.length > 0 ? 1 : 0
