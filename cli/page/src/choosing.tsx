// The scrap bin: what lies there is ticked, and every combination of it is ranked.
import { useEffect, useRef, useState } from 'preact/hooks'
import { isMap, isScalar, isSeq, parseDocument, type Document } from 'yaml'
import { isRefusal, refusalWords, type MadeFile } from './asked'
import { Dropped, type Core } from './core'
import { OpenOrExample, TextBox } from './opening'
import { saveMade } from './saving'
import type { Store } from './store'

const lists: [string, string][] = [
  ['fans', 'Fans'],
  ['packs', 'Packs'],
  ['step_ups', 'Step-ups'],
  ['tubes', 'Tubes'],
  ['engines', 'Engines']
]
interface Thing {
  list: string
  at: number
  name: string
}
function documentOf(text: string): Document | undefined {
  try {
    const document = parseDocument(text, { strict: false })
    return document.errors.length === 0 && isMap(document.contents) ? document : undefined
  } catch {
    return undefined
  }
}
function thingsIn(document: Document | undefined): Thing[] {
  return lists.flatMap(([list]) => {
    const items = document?.get(list)
    if (!isSeq(items)) return []
    return items.items.map((item, at) => ({
      list,
      at,
      name: isMap(item)
        ? String(item.get('name') ?? `${list} ${at + 1}`)
        : isScalar(item)
          ? String(item.value)
          : `${list} ${at + 1}`
    }))
  })
}
/// Gives every name in a page taken over a beginning of its own, so that none stands twice.
function setApart(root: Element, prefix: string): void {
  for (const element of root.querySelectorAll('*'))
    for (const { name, value } of [...element.attributes])
      if (name === 'id' || name === 'for' || name.startsWith('aria-labelledby') || name === 'aria-describedby')
        element.setAttribute(
          name,
          value
            .split(' ')
            .map(id => `${prefix}-${id}`)
            .join(' ')
        )
      else if (value.includes('#')) element.setAttribute(name, value.replace(/(^|url\()#(?=[a-z])/g, `$1#${prefix}-`))
}
const idOfThing = (thing: Thing): string => `${thing.list}-${thing.at}`
/// The bin with what is ticked alone.
function ticked(text: string, left_out: Set<string>): string {
  const document = documentOf(text)
  if (!document || left_out.size === 0) return text
  for (const thing of thingsIn(document).reverse())
    if (left_out.has(idOfThing(thing))) document.deleteIn([thing.list, thing.at])
  return document.toString({ lineWidth: 0 })
}

function Ticks({ things, left_out, tick }: { things: Thing[]; left_out: Set<string>; tick: (thing: Thing) => void }) {
  return (
    <>
      {lists
        .filter(([list]) => things.some(thing => thing.list === list))
        .map(([list, title]) => (
          <fieldset key={list}>
            <legend>{title}</legend>
            {things
              .filter(thing => thing.list === list)
              .map(thing => (
                <label class="tick" key={idOfThing(thing)}>
                  <input type="checkbox" checked={!left_out.has(idOfThing(thing))} onChange={() => tick(thing)} />{' '}
                  {thing.name}
                </label>
              ))}
          </fieldset>
        ))}
    </>
  )
}
export function ChoosePlace({ store, core }: { store: Store; core: Core }) {
  const example = store.state.form?.examples.find(one => one.name.startsWith('examples/bins/'))
  const [text, setText] = useState('')
  const [left_out, setLeftOut] = useState(new Set<string>())
  const [told, setTold] = useState('')
  const [files, setFiles] = useState<MadeFile[]>([])
  const ranking = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (text.trim() === '') return
    const timer = window.setTimeout(() => {
      setTold('Ranking.')
      core.ask('choose', { text: ticked(text, left_out), samples: 0 }, 'work', 60).then(
        reply => {
          if (isRefusal(reply)) return setTold(refusalWords(reply))
          setTold('')
          setFiles(reply.files)
          const page = new DOMParser().parseFromString(reply.html.replace(/<style>[^]*?<.style>/, ''), 'text/html')
          setApart(page.body, 'bin')
          ranking.current?.replaceChildren(...document.importNode(page.body, true).childNodes)
        },
        error => (error instanceof Dropped ? undefined : setTold(String(error)))
      )
    }, 300)
    return () => window.clearTimeout(timer)
  }, [text, left_out])
  const tick = (thing: Thing): void => {
    const changed = new Set(left_out)
    if (!changed.delete(idOfThing(thing))) changed.add(idOfThing(thing))
    setLeftOut(changed)
  }
  const take = (bin: string): void => {
    setText(bin)
    setLeftOut(new Set())
  }
  return (
    <div class="choosing">
      <p class="lead">
        Open or type what lies in your bin, and tick what may be used: every combination is ranked for every engine.
      </p>
      <OpenOrExample label="Open a bin" example={example} taken={take} />
      <Ticks things={thingsIn(documentOf(text))} left_out={left_out} tick={tick} />
      <details>
        <summary>The bin as text</summary>
        <TextBox id="bin" label="The bin" rows={12} text={text} typed={setText} />
      </details>
      <p role="status" class="told">
        {told}
      </p>
      {files
        .filter(file => file.name.endsWith('.yaml'))
        .map(file => (
          <p key={file.name}>
            <button type="button" onClick={() => store.open(file.text, file.name.replace('.yaml', ''))}>
              Take up {file.name}
            </button>{' '}
            {file.what}
          </p>
        ))}
      {files.length > 0 && (
        <p class="row">
          {files
            .filter(file => !file.name.endsWith('.yaml'))
            .map(file => (
              <button type="button" key={file.name} onClick={() => saveMade(file)}>
                {file.name}
              </button>
            ))}
        </p>
      )}
      <div ref={ranking} class="ranking report" />
    </div>
  )
}
