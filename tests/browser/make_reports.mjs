// The pages that are looked at: the guide, the report of every example and the choice from every bin, some with little in them, and
// some whose owner means ill.
import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'

const hostile = '"><img src=x onerror=alert(1)><script>alert(1)</script>&amp;\u202Egnol\n=cmd()|\'[x](javascript:alert(1)) 煙突 '
export const hostileText = hostile.replace('\u202E', '?').replace('\n', ' ') + 'x'.repeat(300)

const fitOnly = `engine: { chimney: { bore: 17.6 mm, depth: 30 mm } }
adapter: { tube: { outside: 17.2 mm, wall: 0.4 mm, length: 40 mm } }
`

export function makeReports(probe, program, examples, folder) {
  rmSync(folder, { recursive: true, force: true })
  const write = (name, file, more) => {
    const here = join(folder, name)
    mkdirSync(here, { recursive: true })
    execFileSync(probe, [file, here, ...more])
  }
  for (const file of readdirSync(examples).filter(f => f.endsWith('.yaml'))) {
    write(basename(file, '.yaml'), join(examples, file), ['100'])
  }
  write('hostile', join(examples, 'tarn-beck.yaml'), ['0', hostile + 'x'.repeat(300)])
  const little = join(folder, 'little.yaml')
  writeFileSync(little, fitOnly)
  write('little', little, [])
  execFileSync(program, ['guide', '-o', join(folder, 'guide'), '--samples', '40'])

  const choose = (name, bin) => {
    const here = join(folder, name)
    mkdirSync(here, { recursive: true })
    execFileSync(probe, ['choose', bin, here])
  }
  const bins = join(examples, 'bins')
  for (const file of readdirSync(bins).filter(f => f.endsWith('.yaml'))) choose(`choice-${basename(file, '.yaml')}`, join(bins, file))
  const shed = readFileSync(join(bins, 'tarn-beck-shed.yaml'), 'utf8')
  const other = (name, ...changes) => {
    let text = shed
    for (const [from, to] of changes) {
      if (!text.includes(from)) throw new Error(`${from} is not in the bin`)
      text = text.replace(from, () => to)
    }
    const bin = join(folder, `${name}.yaml`)
    writeFileSync(bin, text)
    choose(name, bin)
  }
  const said = JSON.stringify(hostile.replace(/[\u202E\n]/g, ''))  // a bin may hold no control character
  other('choice-hostile', ['name: Tarn Beck shed', `name: ${said}`], ['name: quick 40 mm', `name: ${said}`],
    ['name: Low Gill tank', `name: ${JSON.stringify('W'.repeat(100))}`], ['name: thin 13 mm', `name: ${JSON.stringify('<b>&lt;' + 'x'.repeat(80))}`])
  other('choice-little', ['chimney: { bore: 13.6 mm +- 0.02 mm, depth: 32 mm,', 'chimney: { depth: 32 mm,'])
  other('choice-hasty', ['steam_within: 12 min, light_ups_per_charge: 5', 'steam_within: 2 min, light_ups_per_charge: 400'], ['steam_within: 9 min', 'steam_within: 60 min'])
  other('choice-one-engine', [shed.slice(shed.indexOf('  - name: Low Gill tank')), ''])
}
