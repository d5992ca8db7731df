// Writes reports and choices, opens each in Debian's chromium and asks it, and general checkers, what is wrong with it.
// node report.mjs PROBE EXAMPLES FOLDER: the folder is emptied first. Prints one line a failure.
import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { execFileSync } from 'node:child_process'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { HtmlValidate } from 'html-validate'
import { Parser } from 'commonmark'
import { hostileText, makeReports } from './make_reports.mjs'

const [probe, examples, folder] = process.argv.slice(2)
makeReports(probe, examples, folder)
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const failures = []
let asked = 0
function expect(condition, what) {
  asked += 1
  if (!condition) failures.push(what)
}

// The standard's own rules and those for accessibility. What is switched off contradicts XML or pictures drawn inline.
const validator = new HtmlValidate({
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: { 'void-style': ['error', { style: 'selfclosing' }], 'prefer-native-element': ['error', { exclude: ['img', 'region'] }] },
})

async function opened(browser, file, options) {
  const context = await browser.newContext(options)
  const page = await context.newPage()
  const said = []
  page.on('console', message => said.push(`console ${message.type()}: ${message.text()}`))
  page.on('pageerror', error => said.push(`error: ${error}`))
  page.on('request', request => {
    if (request.url() !== `file://${file}`) said.push(`asks for ${request.url()}`)
  })
  page.on('dialog', dialog => {
    said.push(`dialog: ${dialog.message()}`)
    dialog.dismiss()
  })
  await page.goto(`file://${file}`)
  return { page, context, said }
}

// Words of a picture that lie on each other or stick out of it, as the browser itself measures them.
function crowded() {
  const wrong = []
  for (const svg of document.querySelectorAll('svg.chart')) {
    const box = svg.getBoundingClientRect()
    if (box.width === 0) continue
    const texts = [...svg.querySelectorAll('text')].map(text => ({ words: text.textContent, box: text.getBoundingClientRect() }))
    const id = svg.getAttribute('aria-labelledby')
    for (const [i, one] of texts.entries()) {
      if (one.box.left < box.left - 2 || one.box.right > box.right + 2 || one.box.top < box.top - 2 || one.box.bottom > box.bottom + 2)
        wrong.push(`${id}: "${one.words}" sticks out`)
      for (const other of texts.slice(i + 1)) {
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left)
        const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top)
        if (wide > 1 && high > 0.35 * Math.min(one.box.height, other.box.height))
          wrong.push(`${id}: "${one.words}" lies on "${other.words}"`)
      }
    }
  }
  return wrong
}

async function look(browser, file, name, width, scheme) {
  const at = `${name}, ${width} px, ${scheme}`
  const { page, context, said } = await opened(browser, file, { viewport: { width, height: 900 }, colorScheme: scheme })
  expect(said.length === 0, `${at}: ${said.join('; ')}`)
  const room = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth])
  expect(room[0] <= room[1], `${at}: ${room[0]} px wide in a window of ${room[1]}: it scrolls sideways`)
  const wrong = await page.evaluate(crowded)
  expect(wrong.length === 0, `${at}: ${wrong.join('; ')}`)
  const charts = await page.evaluate(() => [...document.querySelectorAll('svg.chart')].filter(s => s.getBoundingClientRect().width > 0).length)
  expect(charts === await page.evaluate(() => document.querySelectorAll('svg.chart').length) / 2, `${at}: ${charts} pictures are seen`)
  const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor.match(/\d+/g).map(Number))
  expect(scheme === 'dark' ? Math.max(...ground) < 80 : Math.min(...ground) > 200, `${at}: the ground is ${ground}`)
  await context.close()
}

// Playwright's own worlds are not bound by the page's policy, so axe runs while the page itself may run nothing.
async function accessible(browser, file, name, width, scheme) {
  const { page, context } = await opened(browser, file, { viewport: { width, height: 900 }, colorScheme: scheme, bypassCSP: true })
  await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true }))
  await page.evaluate(axe)
  const result = await page.evaluate(() => axe.run(document))
  expect(result.passes.length > 10, `${name}: axe judged only ${result.passes.length} rules`)
  expect(result.passes.some(rule => rule.id === 'color-contrast'), `${name}: axe judged no contrast`)
  for (const v of result.violations.filter(v => v.impact === 'serious' || v.impact === 'critical'))
    failures.push(`${name}, ${width} px, ${scheme}: ${v.id}, ${v.help}: ${v.nodes.slice(0, 3).map(n => n.html).join(' ')}`)
  await context.close()
}

// On paper every picture lies whole on one page, and everything that is folded is unfolded.
async function printed(browser, file, name, out) {
  const { page, context } = await opened(browser, file, { viewport: { width: 1000, height: 900 }, colorScheme: 'dark', bypassCSP: true })
  await page.addStyleTag({ content: '.chart .halo { stroke: none }' }) // a halo prints the words twice
  const pdf = join(out, 'page.pdf')
  await page.pdf({ path: pdf, format: 'A4', preferCSSPageSize: true, printBackground: true })
  await page.emulateMedia({ media: 'print' })
  const folded = await page.evaluate(() => [...document.querySelectorAll('details article dd')].map(d => d.textContent.replace(/\s+/g, ' ').trim().slice(0, 24)))
  const titles = await page.evaluate(() => [...document.querySelectorAll('svg.wide')].map(svg => {
    const words = [...svg.querySelectorAll('text')].map(t => t.textContent.replace(/\s+/g, ' ').trim())
    return words
  }))
  const ground = await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--paper').trim())
  expect(ground === '#ffffff', `${name}: paper is ${ground}`)
  const pages = execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' }).split('\f').map(t => t.replace(/\s+/g, ' '))
  const all = pages.join(' ')
  for (const words of folded) expect(all.includes(words), `${name}: "${words}", which is folded, is not printed`)
  for (const words of titles) {
    const longest = words.filter(w => /[a-z]{4}/.test(w))
    const whole = pages.some(p => longest.every(w => p.includes(w)))
    expect(whole, `${name}: a picture with "${longest.slice(0, 3).join('", "')}" is not whole on one page`)
  }
  const sizes = execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }).match(/Page size: +([\d.]+) x ([\d.]+)/)
  expect(Math.abs(sizes[1] - 595) < 1 && Math.abs(sizes[2] - 842) < 1, `${name}: printed on ${sizes[0]}`)
  await context.close()
}

// By the reference parser of CommonMark: what users say is text and nothing else.
function markdown(text, name) {
  const walker = new Parser().parse(text).walker()
  const kinds = new Set()
  let first = ''
  for (let event = walker.next(); event; event = walker.next()) {
    kinds.add(event.node.type)
    if (event.entering && event.node.type === 'text' && event.node.parent.type === 'heading' && event.node.parent.level === 1)
      first += event.node.literal
  }
  for (const kind of ['html_inline', 'html_block', 'link', 'image', 'code_block'])
    expect(!kinds.has(kind), `${name}: report.md holds ${kind}`)
  expect(first !== '', `${name}: report.md has no title`)
  if (name === 'hostile') expect(first === hostileText, `${name}: in report.md its name became "${first}"`)
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] })
for (const name of readdirSync(folder)) {
  const here = join(folder, name)
  if (!statSync(here).isDirectory()) continue
  const isReport = existsSync(join(here, 'report.html'))
  const file = join(here, isReport ? 'report.html' : 'choice.html')
  const text = readFileSync(file, 'utf8')
  expect(text.length < 400e3, `${name}: ${text.length} bytes`)
  const report = await validator.validateString(text, file)
  for (const result of report.results)
    for (const m of result.messages) failures.push(`${name}: html-validate ${m.ruleId}, line ${m.line}: ${m.message}`)
  if (isReport) markdown(readFileSync(join(here, 'report.md'), 'utf8'), name)
  for (const width of [360, 390, 800, 1200]) await look(browser, file, name, width, 'light')
  for (const width of [360, 1200]) await look(browser, file, name, width, 'dark')
  await accessible(browser, file, name, 360, 'dark')
  await accessible(browser, file, name, 1200, 'light')
  await printed(browser, file, name, here)
  const title = await titleOf(browser, file)
  if (name === 'hostile') expect(title.startsWith(hostileText), `${name}: its name became "${title}"`)
  expect(title !== '', `${name}: no title`)
}
async function titleOf(browser, file) {
  const { page, context, said } = await opened(browser, file, {})
  const title = await page.title()
  const scripts = await page.evaluate(() => document.querySelectorAll('script, img, iframe, object, embed, link').length)
  expect(scripts === 0, `${file}: ${scripts} elements that a report does not have`)
  await page.waitForLoadState('networkidle')
  expect(said.length === 0, `${file}: ${said.join('; ')}`)
  const handlers = await page.evaluate(() => [...document.querySelectorAll('*')].flatMap(e => [...e.attributes].filter(a => a.name.startsWith('on') || a.name === 'style')).length)
  expect(handlers === 0, `${file}: ${handlers} attributes that run or style`)
  await context.close()
  return title
}
await browser.close()
writeFileSync(join(folder, 'failures.txt'), failures.join('\n'))
for (const failure of failures) console.log(failure)
console.log(`${asked} questions, ${failures.length} failures`)
process.exit(failures.length > 0 || asked < 100 ? 1 : 0)
