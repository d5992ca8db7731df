// How the page looks, on screens and on paper, to those who do not see it, and what it leaves behind in memory.
// node looks.mjs PAGE PROGRAM BUILDS ROOT prints figures, and one line a failure.
import { spawnSync } from 'node:child_process'
import { readFileSync, statSync } from 'node:fs'
import { createRequire } from 'node:module'
import { example, expect, failures, figures, file, opened, place, program, run, samples } from './opened.mjs'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
/// Nothing sticks out, nothing is unreadable, in any width and either light; axe finds nothing.
async function looks() {
  for (const width of [360, 768, 1280, 1600])
    for (const colorScheme of ['light', 'dark']) {
      const at = `looks, ${width} px, ${colorScheme}`
      const { page, context } = await opened(at, { viewport: { width, height: 900 }, colorScheme, bypassCSP: true })
      await example(page)
      const ground = await page.evaluate(() =>
        getComputedStyle(document.body).backgroundColor.match(/\d+/g).map(Number)
      )
      expect(
        colorScheme === 'dark' ? Math.max(...ground) < 80 : Math.min(...ground) > 200,
        `${at}: the ground is ${ground}`
      )
      for (const part of ['#work', '#answer']) {
        const [all, seen] = await page.evaluate(
          part => [document.querySelector(part).scrollWidth, document.querySelector(part).clientWidth],
          part
        )
        expect(all <= seen, `${at}: ${part} is ${all} px wide in ${seen}`)
      }
      await page.screenshot({ path: `page-${width}-${colorScheme}.png` })
      if (width === 360 || width === 1280) await accessible(page, at)
      await context.close()
    }
}
async function accessible(page, at) {
  await page.evaluate(axe)
  for (const title of ['Build', 'Levers', 'Making', 'Bin', 'Log', 'Text']) {
    await place(page, title)
    await page.evaluate(() =>
      document.querySelectorAll('details').forEach(d => {
        d.open = true
      })
    )
    await page.waitForTimeout(300)
    const result = await page.evaluate(() => axe.run(document))
    expect(
      result.passes.some(rule => rule.id === 'color-contrast'),
      `${at}: axe judged no contrast`
    )
    for (const v of result.violations)
      failures.push(
        `${at}, ${title}: ${v.id}, ${v.help}: ${v.nodes
          .slice(0, 3)
          .map(n => n.html.slice(0, 160))
          .join(' ')}`
      )
  }
}
/// Every key of the description has a field; printed, the page is the report.
async function wholeAndPrinted() {
  const { page, context } = await opened('whole')
  await example(page)
  await samples(page, 1000)
  await page.evaluate(() =>
    document.querySelectorAll('details').forEach(d => {
      d.open = true
    })
  )
  await page.waitForTimeout(300)
  const fields = await page.evaluate(() =>
    [...document.querySelectorAll('.field input, .field select')].map(e => e.id)
  )
  const schema = JSON.parse(spawnSync(program, ['schema'], { encoding: 'utf8' }).stdout)
  const keys = (part, path) =>
    Object.entries(part.properties ?? {})
      .filter(([, value]) => !value.deprecated)
      .flatMap(([key, value]) => (value.properties ? keys(value, [...path, key]) : [[...path, key].join('-')]))
  const wanted = keys(schema, []).map(key => `field-${key}`)
  expect(
    wanted.length > 100 && wanted.every(id => fields.includes(id)),
    `whole: no field for ${wanted.filter(id => !fields.includes(id)).join(', ')}`
  )
  await page.evaluate(() =>
    document.querySelectorAll('.answer details').forEach(d => {
      d.open = false
    })
  )
  await page.pdf({ path: 'page.pdf', preferCSSPageSize: true, printBackground: true })
  const text = spawnSync('pdftotext', ['page.pdf', '-'], { encoding: 'utf8' }).stdout.replace(/\s+/g, ' ')
  expect(
    text.includes('Tarn Beck lighting-up fan') && text.includes('Cautions that apply here'),
    'printed: the report is not on paper'
  )
  expect(!text.includes('Write what you measured'), 'printed: the form is on paper')
  await context.close()
}
/// 500 edits, and what they leave behind.
async function memory() {
  const { page, context } = await opened('memory')
  await example(page)
  const session = await context.newCDPSession(page)
  const used = async () => {
    await session.send('HeapProfiler.collectGarbage')
    return (await session.send('Runtime.getHeapUsage')).usedSize
  }
  const edits = count =>
    page.evaluate(async count => {
      const field = document.getElementById('field-engine-boiler-water')
      for (let i = 0; i < count; ++i) {
        field.value = `${400 + (i % 90)} ml`
        field.dispatchEvent(new Event('input', { bubbles: true }))
        await new Promise(done => setTimeout(done, 12))
      }
    }, count)
  await edits(100)
  const before = await used()
  await edits(500)
  figures['growth over 500 edits, MB'] = (((await used()) - before) / 1e6).toFixed(1)
  expect(
    figures['growth over 500 edits, MB'] < 10,
    `memory: 500 edits leave ${figures['growth over 500 edits, MB']} MB`
  )
  await context.close()
}

function size() {
  figures['file, MB'] = (statSync(file).size / 1e6).toFixed(2)
  expect(statSync(file).size <= 4.5e6, `the file is ${figures['file, MB']} MB`)
}

await run(size, wholeAndPrinted, memory, looks)
