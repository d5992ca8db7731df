// A user's paths through the page. node page.mjs PAGE PROGRAM BUILDS ROOT prints figures, and one line a failure.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { example, expect, failures, figures, file, opened, place, program, root, run, samples } from './opened.mjs'

/// From nothing to a verdict by keyboard alone, saved, opened again: the same.
async function byKeyboard() {
  const { page, context, first } = await opened('keyboard')
  figures['first answer, ms'] = first
  const values = {
    'fan.kind': 'centrifugal',
    'fan.frame': '50 mm',
    'fan.rated.voltage': '12 V',
    'engine.chimney.bore': '17.6 mm',
    'adapter.tube.outside': '17.2 mm',
    'adapter.tube.length': '44 mm',
    'engine.boiler.water': '430 ml',
    'engine.boiler.own_blower_from': '1.1 bar',
    'engine.grate.length': '62 mm',
    'engine.grate.width': '41 mm',
    'engine.tubes.count': '9',
    'engine.tubes.bore': '7.8 mm',
    'engine.tubes.length': '138 mm'
  }
  const left = new Map(Object.entries(values).map(([key, value]) => [`field-${key.replaceAll('.', '-')}`, value]))
  for (let step = 0; step < 400 && left.size > 0; ++step) {
    await page.keyboard.press('Tab')
    const at = await page.evaluate(() => {
      const e = document.activeElement
      return {
        id: e.id,
        tag: e.tagName,
        shut: e.tagName === 'SUMMARY' && !e.parentElement.open && e.parentElement.classList.contains('group')
      }
    })
    if (at.shut) await page.keyboard.press('Enter')
    const value = left.get(at.id)
    if (value === undefined) continue
    await page.keyboard.type(value)
    left.delete(at.id)
  }
  expect(left.size === 0, `keyboard: never came to ${[...left.keys()].join(', ')}`)
  await samples(page, 64).catch(() => 0)
  await samples(page, 1000)
  const told = await page.textContent('.verdict .words')
  expect(/fail|watch|do/.test(told), `keyboard: the verdict says "${told}"`)
  const steam = await page.textContent('.answers li:first-child .figure')
  expect(/min/.test(steam), `keyboard: time to steam is "${steam}"`)
  const saving = page.waitForEvent('download')
  await page.focus('button:text-is("Save")')
  await page.keyboard.press('Enter')
  const saved = 'saved.yaml'
  await (await saving).saveAs(saved)
  const check = spawnSync(program, ['check', saved, '--samples', '0'], { encoding: 'utf8' })
  expect(
    check.status === 0 || check.status === 1,
    `keyboard: what was saved is not taken by the program: ${check.stderr}`
  )
  await page.setInputFiles('input[type=file]', saved)
  await samples(page, 1000)
  expect((await page.textContent('.verdict .words')) === told, 'keyboard: opened again, the verdict is another')
  expect(
    (await page.textContent('.answers li:first-child .figure')) === steam,
    'keyboard: opened again, the time is another'
  )
  await context.close()
}

/// A fault stands beside its field in the words of the program; comments survive; undo and redo.
async function faultsAndComments() {
  const { page, context } = await opened('faults')
  await example(page)
  await page.fill('#field-engine-boiler-water', '14 V')
  await page.waitForSelector('#field-engine-boiler-water-fault')
  const fault = await page.textContent('#field-engine-boiler-water-fault')
  expect(fault.includes('expected a volume') && fault.includes("'14 V'"), `faults: it says "${fault}"`)
  await page.fill('#field-engine-boiler-water', '500 ml')
  await page.waitForSelector('#field-engine-boiler-water-fault', { state: 'detached' })
  await place(page, 'Text')
  const text = await page.inputValue('#text')
  const original = readFileSync(join(root, 'examples/tarn-beck.yaml'), 'utf8')
  expect(
    text === original.replace('water: 430 ml', 'water: 500 ml'),
    'faults: the text is not the same but for the water'
  )
  await page.click('button:text-is("Undo")')
  expect((await page.inputValue('#text')) === original, 'faults: undo does not bring the example back')
  await page.click('button:text-is("Redo")')
  expect((await page.inputValue('#text')) === text, 'faults: redo does not bring the change back')
  await place(page, 'Build')
  await page.fill('#field-engine-boiler-water', '')
  await page.waitForFunction(
    () => document.querySelector('#field-engine-boiler-water')?.getAttribute('placeholder') !== ''
  )
  await context.close()
}

/// The place of the field that has the focus stands out in its drawing; a place that is clicked leads to its field, also
/// where that is folded away.
async function sketches() {
  const { page, context } = await opened('sketches')
  await example(page)
  await page.waitForSelector('.sketch [data-key="engine.tubes.bore"]')
  await page.focus('#field-engine-tubes-bore')
  await page.waitForSelector('.sketch.at-hand .active')
  const active = () =>
    page.evaluate(() => [...document.querySelectorAll('.sketch .active')].map(place => place.dataset.key).join())
  expect((await active()) === 'engine.tubes.bore', `sketches: the field of the bore marks ${await active()}`)
  await page.fill('#field-engine-tubes-bore', '8.25 mm')
  await page.waitForFunction(() => document.querySelector('.sketch .active text.value').textContent.includes('8.25 mm'))
  await page.click('.sketch [data-key="engine.boiler.lagging"] .letter >> nth=0')
  expect(
    (await page.evaluate(() => document.activeElement.id)) === 'field-engine-boiler-lagging',
    'sketches: a click on the felt does not lead to its field'
  )
  await page.waitForFunction(
    () => document.querySelector('.sketch .active')?.dataset.key === 'engine.boiler.lagging'
  )
  await page.evaluate(() =>
    document.querySelectorAll('.work details').forEach(d => {
      d.open = true
    })
  )
  await page.waitForFunction(() => document.querySelectorAll('.sketch').length === 9)
  const lost = await page.evaluate(() =>
    [...document.querySelectorAll('.sketch [data-key]')]
      .map(place => place.dataset.key)
      .filter(key => {
        const field = document.getElementById(`field-${key.replaceAll('.', '-')}`)
        return !field || field.closest('.group') !== document.querySelector(`.sketch [data-key="${key}"]`).closest('.group')
      })
  )
  expect(lost.length === 0, `sketches: not beside their fields: ${lost}`)
  await context.close()
}

/// Markup in a name stays text; hostile text gives faults and the page goes on.
async function hostile() {
  const { page, context } = await opened('hostile')
  await place(page, 'Text')
  await page.fill('#text', 'name: "<img src=x onerror=alert(1)><script>alert(1)</script>"')
  await page.waitForFunction(() => document.querySelector('.part-head h1').textContent.includes('<img'))
  expect(
    (await page.evaluate(() => document.querySelectorAll('#page img, #page script').length)) === 0,
    'hostile: markup of a name became elements'
  )
  for (const [name, text] of Object.entries({
    deep: '['.repeat(20_000),
    colons: ':'.repeat(3000),
    aliases: 'a: &a [*a]',
    tag: '!!binary x',
    twice: 'fan: {}\nfan: {}'
  })) {
    await page.fill('#text', text)
    await page
      .waitForFunction(
        () => /fault/.test(document.querySelector('.status').textContent) || document.querySelector('[role=alert]'),
        undefined,
        { timeout: 7000 }
      )
      .catch(() => failures.push(`hostile: ${name} is neither refused nor ended`))
  }
  await page.fill('#text', 'name: afterwards')
  await page
    .waitForFunction(() => document.querySelector('.part-head h1').textContent === 'afterwards', undefined, {
      timeout: 8000
    })
    .catch(() => failures.push('hostile: it does not go on afterwards'))
  await context.close()
}

/// A lever moves the build, tells before and after, and is put back; how long a step takes to a painted frame.
async function levers() {
  const { page, context } = await opened('levers')
  await example(page)
  await samples(page, 1000)
  await place(page, 'Levers')
  await page.waitForSelector('.lever input', { timeout: 20_000 })
  expect((await page.locator('.lever').count()) === 6, `levers: there are ${await page.locator('.lever').count()}`)
  const slider = page.locator('.lever', { hasText: 'supply.step_up.output' }).locator('input')
  const times = await slider.evaluate(async input => {
    const out = []
    const shown = () => document.querySelector('.answers li:nth-child(2) .figure').textContent
    for (let i = 0; i < 24; ++i) {
      const before = shown(),
        begin = performance.now()
      input.value = String(Number(input.value) + (i % 4 < 2 ? -1 : 1))
      input.dispatchEvent(new Event('input', { bubbles: true }))
      while (shown() === before && performance.now() - begin < 2000) await new Promise(requestAnimationFrame)
      out.push(performance.now() - begin)
    }
    return out.sort((a, b) => a - b)
  })
  figures['slider step to frame, ms, median'] = Math.round(times[12])
  expect(times[12] < 150, `levers: a step takes ${times[12]} ms`) // 40 ms on a machine of its own; tests share theirs
  await slider.focus()
  await page.keyboard.press('ArrowLeft')
  await page.waitForSelector('.side-by-side')
  const rows = await page.locator('.side-by-side tbody tr').count()
  expect(rows === 6, `levers: ${rows} answers stand side by side`)
  await page.click('.side-by-side button:text-is("Put back")')
  await page.waitForSelector('.side-by-side', { state: 'detached' })
  await place(page, 'Text')
  expect(
    (await page.inputValue('#text')) === readFileSync(join(root, 'examples/tarn-beck.yaml'), 'utf8'),
    'levers: put back is not what was'
  )
  await context.close()
}

/// Files to take along; the bin; the log.
async function makingChoosingTuning() {
  const { page, context } = await opened('making')
  await example(page)
  await place(page, 'Making')
  await page.click('button:text-is("Make the files")')
  await page.waitForSelector('.files li', { timeout: 60_000 })
  const names = await page.locator('.files button').allTextContents()
  for (const name of [
    'report.html',
    'report.json',
    'templates.pdf',
    'templates-1.svg',
    'flange_mm.dxf',
    'holes.csv',
    'sheet.txt'
  ])
    expect(names.includes(name), `making: there is no ${name}`)
  const saving = page.waitForEvent('download')
  await page.click('.files button:text-is("templates.pdf")')
  await (await saving).saveAs('templates.pdf')
  const sheets = spawnSync('pdfinfo', ['templates.pdf'], { encoding: 'utf8' })
  expect(sheets.status === 0 && /Pages: +[1-9]/.test(sheets.stdout), `making: templates.pdf: ${sheets.stderr}`)
  await place(page, 'Bin')
  await page.click('.choosing button:text-is("An example")')
  await page.waitForSelector('.ranking h1', { timeout: 60_000 })
  const first = await page.textContent('.ranking')
  await page.click('.choosing .tick:first-of-type input')
  await page.waitForFunction(first => document.querySelector('.ranking').textContent !== first, first, {
    timeout: 60_000
  })
  await place(page, 'Log')
  await page.click('.tuning button:text-is("An example")')
  await page.click('button:text-is("Tune the build")')
  await page.waitForFunction(
    () => document.querySelector('.tuning .told').textContent.includes('factors'),
    undefined,
    { timeout: 60_000 }
  )
  await page.waitForFunction(() => document.querySelector('.title-block').textContent.includes('what the log taught'))
  await context.close()
}

/// A link carries the build; what the browser keeps is offered and never replaced unasked.
async function linksAndKeeping() {
  const { page, context } = await opened('links')
  await example(page, 'high-tarn-32mm', 'High Tarn')
  await page.click('button:text-is("Link")')
  await page.waitForFunction(() => location.hash.length > 100)
  const fragment = await page.evaluate(() => location.hash)
  const kept = await page.evaluate(() => localStorage.getItem('lumwright.build'))
  expect(kept?.includes('High Tarn'), 'links: the build is not kept')
  const other = await context.newPage()
  await other.goto(`file://${file}`)
  await other.waitForSelector('.offer')
  await example(other)
  expect(
    (await other.evaluate(() => localStorage.getItem('lumwright.build'))).includes('High Tarn'),
    'links: what was kept is replaced unasked'
  )
  await other.click('button:text-is("Go on with it")')
  await other.waitForFunction(() => document.querySelector('.part-head h1').textContent.includes('High Tarn'))
  await context.close()
  const again = await opened('linked', {}, fragment)
  expect(
    (await again.page.textContent('.part-head h1')).includes('High Tarn'),
    'links: the fragment does not bring the build'
  )
  await again.context.close()
  const torn = await opened('torn', {}, fragment.slice(0, 60))
  expect(
    (await torn.page.textContent('.part-head h1')).includes('my build'),
    'links: a torn fragment is not left alone'
  )
  await torn.context.close()
}

await run(byKeyboard, faultsAndComments, sketches, hostile, levers, makingChoosingTuning, linksAndKeeping)
