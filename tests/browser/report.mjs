// Writes the guide, reports and choices, opens each in Debian's chromium and asks it, and general checkers, what is wrong with it.
// node report.mjs PROBE PROGRAM EXAMPLES FOLDER: the folder is emptied first. Prints one line a failure.
import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { execFileSync } from 'node:child_process'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { HtmlValidate } from 'html-validate'
import { Parser } from 'commonmark'
import { hostileText, makeReports } from './make_reports.mjs'

const [probe, program, examples, folder] = process.argv.slice(2)
makeReports(probe, program, examples, folder)
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

// How many pictures are seen, and how many there are: each stands there twice, wide and narrow, but a sketch of a part once.
function seenOfDrawn() {
  const all = [...document.querySelectorAll('svg.chart')], sketches = document.querySelectorAll('.sketches svg.chart').length
  return [all.filter(svg => svg.getBoundingClientRect().width > 0).length, (all.length - sketches) / 2 + sketches]
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

// How far a thumb has to go before the appendix, and whether a table is cut off on a telephone.
async function cutOff(page, at) {
  const cut = await page.evaluate(() => [...document.querySelectorAll('.scroll')].filter(t => t.scrollWidth > t.clientWidth + 1).map(t => t.getAttribute('aria-label')))
  expect(cut.length === 0, `${at}: cut off: ${cut.join('; ')}`)
}
async function lengths(page, at, width) {
  if (width < 400 && await page.evaluate(() => document.body.classList.contains('guide'))) await cutOff(page, at)
  const most = { 360: 9000, 1280: 5000 }[width]
  if (most === undefined || !await page.evaluate(() => document.body.classList.contains('report'))) return
  const high = await page.evaluate(() => document.documentElement.scrollHeight)
  expect(high < most, `${at}: ${high} px high before anything is unfolded`)
  if (width > 400) return
  await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true }))
  await cutOff(page, at)
}

async function look(browser, file, name, width, scheme) {
  const at = `${name}, ${width} px, ${scheme}`
  const { page, context, said } = await opened(browser, file, { viewport: { width, height: 900 }, colorScheme: scheme })
  expect(said.length === 0, `${at}: ${said.join('; ')}`)
  const room = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth])
  expect(room[0] <= room[1], `${at}: ${room[0]} px wide in a window of ${room[1]}: it scrolls sideways`)
  await lengths(page, at, width)
  await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true }))
  const open = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth])
  expect(open[0] <= open[1], `${at}: ${open[0]} px wide with everything open in a window of ${open[1]}`)
  const wrong = await page.evaluate(crowded)
  expect(wrong.length === 0, `${at}: ${wrong.join('; ')}`)
  const charts = await page.evaluate(seenOfDrawn)
  expect(charts[0] === charts[1], `${at}: ${charts[0]} of ${charts[1]} pictures are seen`)
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

// What stands in the folds and nowhere else: the beginnings of its longer sentences, and its headings.
function inTheFolds() {
  const clean = text => text.replace(/\s+/g, ' ').trim()
  const open = document.body.cloneNode(true)
  open.querySelectorAll('details').forEach(d => d.remove())
  const outside = clean(open.textContent)
  return [...document.querySelectorAll('details summary, details dd, details caption, details .listing code')]
    .map(e => clean(e.textContent).slice(0, 24)).filter(words => words.length > 11 && !outside.includes(words))
}
async function paper(page, pdf, format = 'A4') {
  await page.pdf({ path: pdf, format, preferCSSPageSize: format === 'A4', printBackground: true })
  return execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1).map(t => t.replace(/\s+/g, ' '))
}
// The folds that are shut are not printed, and what is printed then is two sheets.
async function printedShut(page, name, pdf) {
  const pages = await paper(page, pdf)
  const all = pages.join(' ')
  const folded = await page.evaluate(inTheFolds)
  expect(folded.length > 10, `${name}: only ${folded.length} sentences are folded`)
  for (const words of folded) expect(!all.includes(words), `${name}: "${words}" is printed, though folded`)
  expect(!all.includes('Appendix'), `${name}: the heading of the appendix is printed without it`)
  const cautions = await page.evaluate(() => [...document.querySelectorAll('.caution p')].map(p => p.textContent.trim().split(/\s+/).slice(-3).join(' ')))
  for (const end of cautions) expect(all.includes(end), `${name}: a caution that ends "${end}" is not printed in full`)
  if (name !== 'hostile') expect(pages.length <= 2, `${name}: ${pages.length} sheets with nothing unfolded`)
  await page.evaluate(() => { document.getElementById('numbers').closest('details').open = true })
  const one = (await paper(page, pdf)).join(' ')
  const headings = await page.evaluate(() => [...document.querySelectorAll('summary')].map(s => [s.textContent.replace(/\s+/g, ' ').trim(), s.parentElement.open]))
  for (const [heading, open] of headings)
    expect(one.includes(heading) === open, `${name}: the fold "${heading}" is ${open ? 'open and not printed' : 'shut and printed'}`)
}
// On paper every picture lies whole on one page, and everything that was unfolded is there.
async function printed(browser, file, name, out) {
  const { page, context } = await opened(browser, file, { viewport: { width: 1000, height: 900 }, colorScheme: 'dark', bypassCSP: true })
  await page.addStyleTag({ content: '.chart .halo { stroke: none }' }) // a halo prints the words twice
  const pdf = join(out, 'page.pdf')
  if (await page.evaluate(() => document.body.classList.contains('report'))) await printedShut(page, name, pdf)
  const folded = await page.evaluate(inTheFolds)
  await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true }))
  const pages = await paper(page, pdf)
  await page.emulateMedia({ media: 'print' })
  const titles = await page.evaluate(() => [...document.querySelectorAll('svg.chart')].filter(s => s.getBoundingClientRect().width > 0).map(svg => {
    const words = [...svg.querySelectorAll('text')].map(t => t.textContent.replace(/\s+/g, ' ').trim())
    return words
  }))
  const charts = await page.evaluate(seenOfDrawn)
  expect(charts[0] === charts[1], `${name}: ${charts[0]} of ${charts[1]} pictures are printed`)
  const ground = await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--paper').trim())
  expect(ground === '#ffffff', `${name}: paper is ${ground}`)
  const all = pages.join(' ')
  for (const words of folded) expect(all.includes(words), `${name}: "${words}", which was unfolded, is not printed`)
  for (const [i, text] of pages.entries())
    expect(text.includes(`sheet ${i + 1} of ${pages.length}`), `${name}: page ${i + 1} of ${pages.length} has another number`)
  const wholeOn = (sheets, format, width, height) => {
    for (const words of titles) {
      const longest = words.filter(w => /[a-z]{4}/.test(w))
      const whole = sheets.some(p => longest.every(w => p.includes(w)))
      expect(whole, `${name}: a picture with "${longest.slice(0, 3).join('", "')}" is not whole on one page of ${format}`)
    }
    const sizes = execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }).match(/Page size: +([\d.]+) x ([\d.]+)/)
    expect(Math.abs(sizes[1] - width) < 1 && Math.abs(sizes[2] - height) < 1, `${name}: printed on ${sizes[0]}`)
  }
  wholeOn(pages, 'A4', 595, 842)
  if (await page.evaluate(() => document.body.classList.contains('guide'))) wholeOn(await paper(page, pdf, 'Letter'), 'Letter', 612, 792)
  await context.close()
}

// By the reference parser of CommonMark: what users say is text and nothing else.
function markdown(text, name) {
  const walker = new Parser().parse(text).walker()
  const kinds = new Set()
  let first = ''
  let fenced = 0
  for (let event = walker.next(); event; event = walker.next()) {
    kinds.add(event.node.type)
    if (event.entering && event.node.type === 'code_block') fenced += 1
    expect(event.node.type !== 'list' || event.node.listType === 'bullet', `${name}: report.md holds a numbered list`)
    if (event.entering && event.node.type === 'text' && event.node.parent.type === 'heading' && event.node.parent.level === 1)
      first += event.node.literal
  }
  for (const kind of ['html_inline', 'html_block', 'link', 'image'])
    expect(!kinds.has(kind), `${name}: report.md holds ${kind}`)
  expect(fenced === 1, `${name}: report.md holds ${fenced} blocks of code: the description is one`)
  expect(!/\d\\\.\d/.test(text), `${name}: report.md escapes a decimal point`)
  expect(first !== '', `${name}: report.md has no title`)
  if (name === 'hostile') expect(first === hostileText, `${name}: in report.md its name became "${first}"`)
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] })
for (const name of readdirSync(folder)) {
  const here = join(folder, name)
  if (!statSync(here).isDirectory()) continue
  const isReport = existsSync(join(here, 'report.html'))
  const isGuide = existsSync(join(here, 'guide.html'))
  const file = join(here, isReport ? 'report.html' : isGuide ? 'guide.html' : 'choice.html')
  const text = readFileSync(file, 'utf8')
  expect(text.length < 400e3, `${name}: ${text.length} bytes`)
  const report = await validator.validateString(text, file)
  for (const result of report.results)
    for (const m of result.messages) failures.push(`${name}: html-validate ${m.ruleId}, line ${m.line}: ${m.message}`)
  if (isReport) markdown(readFileSync(join(here, 'report.md'), 'utf8'), name)
  for (const width of [360, 390, 800, 1200, 1280]) await look(browser, file, name, width, 'light')
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
  const scripts = await page.evaluate(() => document.querySelectorAll('script, img:not(.guide .sheet img[src^="data:image/svg+xml;base64,"]), iframe, object, embed, link').length)
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
