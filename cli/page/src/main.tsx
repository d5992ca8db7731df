// The page: bar, places of the work on the left, the answer on the right.
import { render } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { AnswerPanel } from './answer'
import { Answering } from './answering'
import { isRefusal } from './asked'
import { ChoosePlace } from './choosing'
import { Core } from './core'
import { FormPlace } from './form'
import { MovePlace } from './levers'
import { buildIn, fragmentOf } from './link'
import { MakePlace } from './making'
import { OpenFile } from './opening'
import { keepBuilds, save } from './saving'
import { Store, type Place } from './store'
import { TextPlace } from './text'
import { TunePlace } from './tuning'
import { fileName } from './words'

const places: [Place, string][] = [
  ['describe', 'Build'],
  ['move', 'Levers'],
  ['make', 'Making'],
  ['choose', 'Bin'],
  ['tune', 'Log'],
  ['text', 'Text']
]

function saveBuild(store: Store): void {
  const name = fileName(store.description.value('name') || store.state.name)
  save(`${name}.yaml`, store.state.text, 'text/yaml;charset=utf-8')
}
async function makeLink(store: Store): Promise<void> {
  location.hash = await fragmentOf(store.state.text)
  try {
    await navigator.clipboard.writeText(location.href)
    store.set({ trouble: '', working: 'The link is copied: it carries the whole build.' })
  } catch {
    store.set({ working: 'The address of this page now carries the whole build: copy it.' })
  }
}
function Bar({ store }: { store: Store }) {
  const examples = (store.state.form?.examples ?? []).filter(one => /^examples\/[^/]+\.yaml$/.test(one.name))
  const open = (name: string): void => {
    const found = examples.find(one => one.name === name)
    if (found) store.open(found.text, name.replace(/^.*\/|\.yaml$/g, ''))
  }
  return (
    <header class="bar">
      <h1>
        Lumwright <span>plans the fan that raises steam</span>
      </h1>
      <div class="row" role="group" aria-label="Files">
        <OpenFile
          label="Open"
          taken={(text, name) => store.open(text, name)}
          refused={why => store.set({ trouble: why })}
        />
        <button type="button" onClick={() => saveBuild(store)}>
          Save
        </button>
        <button type="button" onClick={() => store.open('', 'build')}>
          New
        </button>
        <label class="hidden" for="examples">
          Examples
        </label>
        <select id="examples" value="" onChange={event => open(event.currentTarget.value)}>
          <option value="">Examples</option>
          {examples.map(one => (
            <option key={one.name} value={one.name}>
              {one.name.replace(/^.*\/|\.yaml$/g, '')}
            </option>
          ))}
        </select>
        <button type="button" disabled={!store.canUndo} onClick={() => store.undo()}>
          Undo
        </button>
        <button type="button" disabled={!store.canRedo} onClick={() => store.redo()}>
          Redo
        </button>
        <button
          type="button"
          onClick={() => store.set({ beside: { text: store.state.text, answer: store.state.answer } })}
        >
          Set beside
        </button>
        <button type="button" onClick={() => void makeLink(store)}>
          Link
        </button>
        <label class="hidden" for="units">
          Units
        </label>
        <select
          id="units"
          value={store.state.units}
          onChange={event => store.set({ units: event.currentTarget.value })}
        >
          <option value="">Units as written</option>
          <option value="metric">Metric</option>
          <option value="imperial">Imperial</option>
        </select>
      </div>
    </header>
  )
}
function Offer({ store }: { store: Store }) {
  const { offered } = store.state
  if (offered === undefined) return null
  return (
    <div class="offer" role="region" aria-label="A build kept here">
      <p>This browser has kept a build from before. Until you decide, nothing is kept in its place.</p>
      <button
        type="button"
        onClick={() => {
          store.set({ offered: undefined })
          store.open(offered, 'build')
        }}
      >
        Go on with it
      </button>{' '}
      <button type="button" onClick={() => store.set({ offered: undefined })}>
        Leave it, keep what is here
      </button>
    </div>
  )
}
function PlaceOf({ store, core }: { store: Store; core: Core }) {
  switch (store.state.place) {
    case 'describe':
      return <FormPlace store={store} />
    case 'move':
      return <MovePlace store={store} core={core} />
    case 'make':
      return <MakePlace store={store} core={core} />
    case 'choose':
      return <ChoosePlace store={store} core={core} />
    case 'tune':
      return <TunePlace store={store} core={core} />
    case 'text':
      return <TextPlace store={store} />
  }
}
/// On a telephone: the verdict, and one touch to the answer and back.
function Strip({ store }: { store: Store }) {
  const to = (id: string): void => document.getElementById(id)?.scrollIntoView({ inline: 'start', block: 'nearest' })
  const { answer, refusal } = store.state
  return (
    <nav class="strip" aria-label="Build and answer">
      <button type="button" onClick={() => to('work')}>
        Build
      </button>
      <button type="button" onClick={() => to('answer')}>
        Answer{answer && !refusal ? `: ${answer.verdict}` : refusal ? ': see the faults' : ''}
      </button>
    </nav>
  )
}
function Page({ store, core }: { store: Store; core: Core }) {
  const [, told] = useState(0)
  useEffect(() => store.listen(() => told(n => n + 1)), [])
  return (
    <>
      <a class="skip" href="#answer">
        To the answer
      </a>
      <Bar store={store} />
      <Offer store={store} />
      <div class="panels">
        <section class="work" id="work" aria-label="The work">
          <nav class="places" aria-label="Places">
            <ul>
              {places.map(([place, title]) => (
                <li key={place}>
                  <button
                    type="button"
                    aria-current={store.state.place === place ? 'page' : undefined}
                    onClick={() => store.set({ place })}
                  >
                    {title}
                  </button>
                </li>
              ))}
            </ul>
          </nav>
          <PlaceOf store={store} core={core} />
          <Notices />
        </section>
        <AnswerPanel store={store} />
      </div>
      <Strip store={store} />
    </>
  )
}
function Notices() {
  return (
    <footer class="small-print">
      <p>
        Lumwright judges draught, time, supply and fit; it never judges a boiler safe. For boiler, gas, fire and
        electricity the codes of your place and the people licensed for that work come first, and the makers'
        instructions for what you use.
      </p>
      <p>Nothing that you write leaves this machine: the page has no way to send it.</p>
      <details>
        <summary>Notices of what this page is built on</summary>
        <pre class="told" tabIndex={0}>
          {document.getElementById('notices')?.textContent}
        </pre>
      </details>
    </footer>
  )
}
async function begin(): Promise<void> {
  const store = new Store(),
    core = new Core()
  new Answering(store, core)
  render(<Page store={store} core={core} />, document.getElementById('page')!)
  window.addEventListener(
    'hashchange',
    () =>
      void buildIn(location.hash).then(build => {
        if (build !== undefined && build !== store.state.text) store.open(build, 'build')
      })
  )
  const linked = await buildIn(location.hash)
  if (linked !== undefined) store.open(linked, 'build')
  keepBuilds(store)
  try {
    const form = await core.ask('form', {}, 'slow', 60)
    if (!isRefusal(form)) store.set({ form })
    if (store.state.text === '') store.open('name: my build\n', 'build')
  } catch (error) {
    store.set({ trouble: `The program did not begin: ${String(error)}` })
  }
}
void begin()
