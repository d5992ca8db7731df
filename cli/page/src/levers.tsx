// The levers: the changes that a workshop can make and that move this build most, each as a slider over what it may be.
import { useEffect, useState } from 'preact/hooks'
import { isRefusal, type Lever } from './asked'
import type { Core } from './core'
import { Description } from './description'
import type { Store } from './store'
import { idOf, longLabelOf } from './words'

/// The levers of the build as it stood when they were asked for: their ends stay while one of them is moved.
function useLevers(store: Store, core: Core): { base: string; levers: Lever[] | undefined; told: string } {
  const [found, setFound] = useState<{ base: string; levers: Lever[] | undefined; told: string }>({
    base: '',
    levers: undefined,
    told: ''
  })
  const { text, tuned, units } = store.state
  const moved = found.levers !== undefined && found.base !== text
  const own =
    moved &&
    found.levers!.some(lever => lever.values.some(value => store.description.value(lever.key) === value.value))
  useEffect(() => {
    if (own || found.base === text) return
    const timer = window.setTimeout(() => {
      core.ask('levers', { text, tuned, units }, 'work').then(
        reply =>
          setFound(
            isRefusal(reply)
              ? {
                  base: text,
                  levers: undefined,
                  told: 'Mend the description first: nothing can be moved in what cannot be worked out.'
                }
              : { base: text, levers: reply.levers, told: '' }
          ),
        () => undefined
      )
    }, 300)
    return () => window.clearTimeout(timer)
  }, [text, tuned, units, own])
  return found
}
/// Where the slider stands: at the value that the text has now.
function standing(store: Store, lever: Lever, first: string): number {
  const now = store.description.value(lever.key)
  const at = lever.values.findIndex((value, i) => (i === lever.now ? now === first : value.value === now))
  return at < 0 ? lever.now : at
}
/// What stood behind the keys of a lever before it was moved.
function before(lever: Lever, base: string): Map<string, string> {
  const description = Description.of(base)
  return new Map(lever.values.flatMap(value => value.settings.map(one => [one.key, description.value(one.key)])))
}
function Slider({ store, lever, base, first }: { store: Store; lever: Lever; base: string; first: string }) {
  const at = standing(store, lever, first)
  const id = `${idOf(lever.key)}-lever`
  const words = at === lever.now ? `${first || 'usual'}, as it was` : lever.values[at]!.words
  const move = (to: number): void => {
    if (store.state.beside === undefined) store.set({ beside: { text: base, answer: store.state.answer } })
    const value = lever.values[to]
    if (!value) return
    const was = before(lever, base)
    const back = lever.values[at]!.settings.filter(one => !value.settings.some(other => other.key === one.key)).map(
      one => ({ key: one.key, value: was.get(one.key) ?? '' })
    )
    const text = store.description.withAll([...back, ...value.settings])
    store.edit(text, `lever ${lever.key}`)
  }
  return (
    <div class="lever">
      <label for={id}>
        {longLabelOf(lever.key)} <span class="hint">{lever.key}</span>
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={lever.values.length - 1}
        step={1}
        value={at}
        aria-valuetext={words}
        onInput={event => move(Number(event.currentTarget.value))}
      />
      <output for={id}>{words}</output>
      <button type="button" disabled={at === lever.now} onClick={() => move(lever.now)}>
        Put back
      </button>
    </div>
  )
}
export function MovePlace({ store, core }: { store: Store; core: Core }) {
  const { base, levers, told } = useLevers(store, core)
  if (!levers) return <p>{told || 'Looking for what moves this build most.'}</p>
  const was = Description.of(base)
  return (
    <div class="levers">
      <p class="lead">What a workshop can change and what moves this build most, the strongest first.</p>
      {levers.map(lever => (
        <Slider key={lever.key} store={store} lever={lever} base={base} first={was.value(lever.key)} />
      ))}
      {levers.length === 0 && <p>Too little is known yet for anything to be moved.</p>}
    </div>
  )
}
