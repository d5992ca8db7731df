// The form: every key of a description as a field, part by part in the order one measures.
import { useState } from 'preact/hooks'
import type { Assumed, Fault, Key } from './asked'
import { Sketches } from './sketches'
import type { Store } from './store'
import { grouped, idOf, labelOf, partOf, type Group } from './words'

interface Known {
  store: Store
  assumed: Map<string, Assumed>
  faults: Map<string, Fault[]>
}

const hintOf = (key: Key): string => (key.how ? `${key.meaning}; ${key.how}` : key.meaning)
function assumedWords(assumed: Assumed | undefined): string {
  if (!assumed) return 'not known'
  return assumed.band ? `assumed ${assumed.value} (${assumed.band})` : `assumed ${assumed.value}`
}

function Choice({ known, field, value, described }: { known: Known; field: Key; value: string; described: string }) {
  const words = field.words ?? []
  const all = value === '' || words.includes(value) ? words : [...words, value]
  return (
    <select
      id={idOf(field.key)}
      aria-describedby={described}
      value={value}
      aria-invalid={known.faults.has(field.key)}
      onFocus={() => known.store.set({ active: field.key })}
      onChange={event => known.store.type(field.key, event.currentTarget.value)}
    >
      <option value="">{assumedWords(known.assumed.get(field.key))}</option>
      {all.map(word => (
        <option key={word} value={word}>
          {word}
        </option>
      ))}
    </select>
  )
}
function Input({ known, field, value, described }: { known: Known; field: Key; value: string; described: string }) {
  const [typed, setTyped] = useState<string | undefined>(undefined)
  return (
    <input
      id={idOf(field.key)}
      type="text"
      autocomplete="off"
      spellcheck={false}
      aria-describedby={described}
      aria-invalid={known.faults.has(field.key)}
      value={typed ?? value}
      placeholder={assumedWords(known.assumed.get(field.key))}
      onFocus={() => {
        setTyped(value)
        known.store.set({ active: field.key })
      }}
      onBlur={() => setTyped(undefined)}
      onInput={event => {
        setTyped(event.currentTarget.value)
        known.store.type(field.key, event.currentTarget.value)
      }}
    />
  )
}
function Field({ known, field }: { known: Known; field: Key }) {
  const id = idOf(field.key)
  const faults = known.faults.get(field.key) ?? []
  const value = known.store.description.value(field.key)
  const described = faults.length > 0 ? `${id}-fault ${id}-hint` : `${id}-hint`
  return (
    <div class={faults.length > 0 ? 'field faulty' : 'field'}>
      <label for={id}>{labelOf(field.key)}</label>
      {field.form === 'words' ? (
        <Choice known={known} field={field} value={value} described={described} />
      ) : (
        <Input known={known} field={field} value={value} described={described} />
      )}
      {faults.length > 0 && (
        <p class="fault" id={`${id}-fault`}>
          {faults.map(f => (f.help ? `${f.message}: ${f.help}` : f.message)).join('; ')}
        </p>
      )}
      <p class="hint" id={`${id}-hint`}>
        {hintOf(field)}
        {field.example ? (
          <>
            , as in <code>{field.example}</code>
          </>
        ) : null}
      </p>
    </div>
  )
}
/// The fields of one part of the description under its meaning.
function Part({ known, part, fields }: { known: Known; part: Key | undefined; fields: Key[] }) {
  const shown = fields.map(field => <Field key={field.key} known={known} field={field} />)
  if (!part) return <div class="fields">{shown}</div>
  return (
    <fieldset>
      <legend>
        {labelOf(part.key)}: {part.meaning}
      </legend>
      <div class="fields">{shown}</div>
    </fieldset>
  )
}
function Parts({ known, group, expert }: { known: Known; group: Group; expert: boolean }) {
  const fields = group.keys.filter(key => key.form !== 'part' && key.expert === expert)
  const parts = [...new Set(fields.map(field => partOf(field.key)))]
  return (
    <>
      {parts.map(path => (
        <Part
          key={path}
          known={known}
          part={group.keys.find(key => key.form === 'part' && key.key === path)}
          fields={fields.filter(field => partOf(field.key) === path)}
        />
      ))}
    </>
  )
}
function GroupOfKeys({ known, group }: { known: Known; group: Group }) {
  const fields = group.keys.filter(key => key.form !== 'part')
  const given = fields.filter(field => known.store.description.value(field.key) !== '').length
  const experts = fields.filter(field => field.expert)
  const folded = experts.some(field => known.faults.has(field.key)) || experts.length === fields.length
  const faulty = fields.some(field => known.faults.has(field.key))
  const [open, setOpen] = useState(group.id === 'name' || group.id === 'engine')
  return (
    <details class="group" open={open || faulty} onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{group.title}</h2>{' '}
        <span class="count">
          {given} of {fields.length} known
        </span>
      </summary>
      {(open || faulty) && (
        <>
          <Sketches store={known.store} group={group.id} />
          <Parts known={known} group={group} expert={false} />
          {experts.length > 0 && (
            <details class="experts" open={folded}>
              <summary>For experts: {experts.length} more, usual values do for most builds</summary>
              <Parts known={known} group={group} expert={true} />
            </details>
          )}
        </>
      )}
    </details>
  )
}
export function FormPlace({ store }: { store: Store }) {
  const { form, answer, refusal } = store.state
  if (!form) return <p>The program is being unpacked.</p>
  const faults = new Map<string, Fault[]>()
  for (const fault of refusal?.faults ?? []) faults.set(fault.key, [...(faults.get(fault.key) ?? []), fault])
  const known: Known = { store, faults, assumed: new Map((answer?.assumed ?? []).map(one => [one.key, one])) }
  if (!store.description.readable)
    return (
      <p class="fault">
        The text cannot be read as a description: put it right under "Text", then its fields are here again.
      </p>
    )
  return (
    <form class="form" onSubmit={event => event.preventDefault()} aria-label="The build">
      <p class="lead">
        Write what you measured, with its unit: 9/16 in, 17.2 mm +- 0.02 mm. Leave empty what you do not know.
      </p>
      {grouped(form.keys).map(group => (
        <GroupOfKeys key={group.id} known={known} group={group} />
      ))}
    </form>
  )
}
