// The page opened in Debian's chromium from disk with the network off, and what several tests ask of it.
import { writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { chromium } from 'playwright-core'

export const [folder, program, , root, only] = process.argv.slice(2)
export const file = resolve(folder, 'lumwright.html')
export const failures = []
export const figures = {}
export function expect(condition, what) {
  if (!condition) failures.push(what)
}
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu']
})

export async function opened(name, options = {}, fragment = '') {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    offline: true,
    acceptDownloads: true,
    ...options
  })
  const page = await context.newPage()
  page.on('console', m => failures.push(`${name}: console ${m.type()}: ${m.text().slice(0, 300)}`))
  page.on('pageerror', e => failures.push(`${name}: ${String(e).slice(0, 300)}`))
  page.on('dialog', d => {
    failures.push(`${name}: dialog ${d.message()}`)
    void d.dismiss()
  })
  page.on('request', r => {
    if (!/^(blob|data):|lumwright\.html/.test(r.url())) failures.push(`${name}: asks for ${r.url()}`)
  })
  const begin = Date.now()
  await page.goto(`file://${file}${fragment}`)
  await page.waitForSelector('.part-head h1', { timeout: 20_000 })
  return { page, context, first: Date.now() - begin }
}
export const example = async (page, name = 'tarn-beck', title = 'Tarn Beck') => {
  await page.selectOption('#examples', `examples/${name}.yaml`)
  await page.waitForFunction(title => document.querySelector('.part-head h1')?.textContent.includes(title), title)
}
export const samples = (page, count) =>
  page.waitForFunction(count => document.querySelector('.status')?.textContent === `${count} samples tried`, count, {
    timeout: 60_000
  })
export const place = (page, title) => page.click(`.places button:text-is("${title}")`)

/// Runs each test, or the one that is named; says the figures, then one line a failure.
export async function run(...tests) {
  for (const test of tests) {
    if (only && test.name !== only) continue
    try {
      await test()
    } catch (error) {
      failures.push(`${test.name}: ${String(error).split('\n').slice(0, 3).join(' ')}`)
    }
  }
  await browser.close()
  writeFileSync('figures.json', JSON.stringify(figures, null, 1))
  for (const [name, figure] of Object.entries(figures)) console.log(`${name}: ${figure}`)
  for (const line of [...new Set(failures)]) console.log(line)
  process.exitCode = failures.length > 0 ? 1 : 0
}
