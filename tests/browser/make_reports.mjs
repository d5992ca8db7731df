// The reports that are looked at: every example, one with little in it, and one whose owner means ill.
import { execFileSync } from 'node:child_process'
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'

const hostile = '"><img src=x onerror=alert(1)><script>alert(1)</script>&amp;\u202Egnol\n=cmd()|\'[x](javascript:alert(1)) 煙突 '
export const hostileText = hostile.replace('\u202E', '?').replace('\n', ' ') + 'x'.repeat(300)

const fitOnly = `engine: { chimney: { bore: 17.6 mm, depth: 30 mm } }
adapter: { tube: { outside: 17.2 mm, wall: 0.4 mm, length: 40 mm } }
`

export function makeReports(probe, examples, folder) {
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
}
