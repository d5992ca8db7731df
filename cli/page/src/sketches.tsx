// The drawings of a part beside its fields: the place of the field that has the focus stands out, and a place that is
// clicked leads to its field.
import { useLayoutEffect, useRef } from 'preact/hooks'
import { takeOver } from './answer'
import type { Sketch } from './asked'
import type { Store } from './store'
import { groupOf, idOf } from './words'

function toField(key: string): void {
  const field = document.getElementById(idOf(key))
  for (let fold = field?.closest('details'); fold; fold = fold.parentElement?.closest('details')) fold.open = true
  field?.focus()
}
/// A drawing that comes to stay in sight must not lie over the field that called it.
const clear = (): void => document.activeElement?.scrollIntoView({ block: 'nearest' })
function OneSketch({ sketch, active }: { sketch: Sketch; active: string }) {
  const box = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    takeOver(box.current!, sketch.html)
    let at_hand = false
    for (const place of box.current!.querySelectorAll<SVGElement>('[data-key]'))
      at_hand = place.classList.toggle('active', place.dataset['key'] === active) || at_hand
    const figure = box.current!.parentElement!
    if (at_hand && !figure.classList.contains('at-hand')) clear()
    figure.classList.toggle('at-hand', at_hand)
  })
  return (
    <figure class="sketch">
      <figcaption>{sketch.title}</figcaption>
      <div
        ref={box}
        onClick={event => {
          const key = (event.target as Element).closest<SVGElement>('[data-key]')?.dataset['key']
          if (key) toField(key)
        }}
      />
    </figure>
  )
}
export function Sketches({ store, group }: { store: Store; group: string }) {
  const { answer, active } = store.state
  return (
    <>
      {(answer?.sketches ?? [])
        .filter(one => groupOf(one.part) === group)
        .map(one => (
          <OneSketch key={one.title} sketch={one} active={active} />
        ))}
    </>
  )
}
