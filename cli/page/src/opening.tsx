// Files into the page.
import { useRef } from 'preact/hooks'
import type { Example } from './asked'

const most_bytes = 2_000_000
export function OpenFile({
  label,
  taken,
  refused
}: {
  label: string
  taken: (text: string, name: string) => void
  refused?: (why: string) => void
}) {
  const chooser = useRef<HTMLInputElement>(null)
  const read = async (files: FileList | null): Promise<void> => {
    const file = files?.[0]
    if (!file) return
    if (file.size > most_bytes) return refused?.(`${file.name} is too large to be such a file.`)
    try {
      taken(
        new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer()),
        file.name.replace(/\.ya?ml$/i, '')
      )
    } catch {
      refused?.(`${file.name} cannot be read as text.`)
    }
    if (chooser.current) chooser.current.value = ''
  }
  return (
    <>
      <button type="button" onClick={() => chooser.current?.click()}>
        {label}
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".yaml,.yml,text/yaml"
        hidden
        aria-hidden="true"
        tabIndex={-1}
        onChange={event => void read(event.currentTarget.files)}
      />
    </>
  )
}

/// A text from a file, or the example of its kind.
export function OpenOrExample({
  label,
  example,
  taken
}: {
  label: string
  example: Example | undefined
  taken: (text: string) => void
}) {
  return (
    <p class="row">
      <OpenFile label={label} taken={taken} />
      {example && (
        <button type="button" onClick={() => taken(example.text)}>
          An example
        </button>
      )}
    </p>
  )
}
/// The same text to look at and to change.
export function TextBox({
  id,
  label,
  rows,
  text,
  typed
}: {
  id: string
  label: string
  rows: number
  text: string
  typed: (text: string) => void
}) {
  return (
    <>
      <label for={id}>{label}</label>
      <textarea
        id={id}
        spellcheck={false}
        rows={rows}
        value={text}
        onInput={event => typed(event.currentTarget.value)}
      />
    </>
  )
}
