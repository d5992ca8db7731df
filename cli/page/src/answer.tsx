// The answer: the report of the program, taken over part by part, and the build that it is compared with.
import { useLayoutEffect, useRef } from 'preact/hooks'
import type { Answered, Chief, Part } from './asked'
import type { Store } from './store'

const parts: Part[] = ['head', 'pictures', 'cautions', 'appendix']
const shown = new WeakMap<HTMLElement, string>()
/// The program's own markup, inert while it is read: what users wrote is text in it. What is there already stays.
export function takeOver(box: HTMLElement, html: string): void {
  if (shown.get(box) === html) return
  const part = new DOMParser().parseFromString(html, 'text/html').body
  const open = [...box.querySelectorAll('details[open] > .folded')].map(folded => folded.id)
  box.replaceChildren(...document.importNode(part, true).childNodes)
  for (const id of open)
    box
      .querySelector(`#${CSS.escape(id)}`)
      ?.closest('details')
      ?.setAttribute('open', '')
  shown.set(box, html)
}

function Row({ now, before }: { now: Chief; before: Chief | undefined }) {
  return (
    <tr>
      <th scope="row">{now.title}</th>
      <td>
        {before ? `${before.figure} ` : ''}
        <span class={`badge ${before?.verdict ?? ''}`}>{before?.verdict ?? ''}</span>
      </td>
      <td>
        {now.figure} <span class={`badge ${now.verdict}`}>{now.verdict}</span>
      </td>
    </tr>
  )
}
export function SideBySide({ store, answer }: { store: Store; answer: Answered }) {
  const beside = store.state.beside
  if (!beside?.answer || beside.text === store.state.text) return null
  return (
    <section class="side-by-side" aria-labelledby="side-by-side">
      <h2 id="side-by-side">Before and after</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Answer</th>
            <th scope="col">before</th>
            <th scope="col">now</th>
          </tr>
        </thead>
        <tbody>
          {answer.answers.map((now, i) => (
            <Row key={now.title} now={now} before={beside.answer?.answers[i]} />
          ))}
        </tbody>
      </table>
      <p>
        <button type="button" onClick={() => store.edit(beside.text)}>
          Put back
        </button>{' '}
        <button type="button" onClick={() => store.set({ beside: undefined })}>
          Keep what is now
        </button>
      </p>
    </section>
  )
}
function statusOf(store: Store): string {
  const { answer, refusal, working, stale } = store.state
  if (refusal?.faults)
    return `${refusal.faults.length === 1 ? 'One fault' : `${refusal.faults.length} faults`} in the description; the answer below is the one before it`
  if (refusal?.refused) return refusal.refused
  if (!answer) return 'The program is being unpacked'
  const tried =
    answer.samples > 0
      ? `${answer.samples} samples tried`
      : 'worked out once, every value as written or usual: what passes so may yet fail within its spread'
  return working || (stale ? 'working it out' : tried)
}
export function AnswerPanel({ store }: { store: Store }) {
  const { answer, trouble, refusal, stale, form } = store.state
  const boxes = useRef(new Map<Part, HTMLElement>())
  useLayoutEffect(() => {
    for (const [part, box] of boxes.current) takeOver(box, answer?.parts[part] ?? '')
  }, [answer])
  const box = (id: Part) => (
    <div
      key={id}
      class={`part-${id}`}
      ref={made => {
        if (made) boxes.current.set(id, made)
      }}
    />
  )
  const loose = (refusal?.faults ?? []).filter(fault => fault.key === '')
  return (
    <div class="answer report" id="answer" tabIndex={-1}>
      <section aria-label="The answer" class={refusal || stale ? 'earlier' : ''}>
        {!answer && form && (
          <ul class="first-words">
            {form.first.map(words => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        )}
        <p class="status small-print" role="status">
          {statusOf(store)}
        </p>
        {trouble && (
          <p class="fault" role="alert">
            {trouble}
          </p>
        )}
        {loose.map(fault => (
          <p class="fault" key={`${fault.line}-${fault.column}`}>
            Line {fault.line}: {fault.message}
            {fault.help ? `: ${fault.help}` : ''}
          </p>
        ))}
        {answer && <SideBySide store={store} answer={answer} />}
        {box('head')}
      </section>
      <main>{parts.slice(1).map(box)}</main>
    </div>
  )
}
