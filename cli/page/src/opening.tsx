// Files into the page.
import { useRef } from 'preact/hooks'

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
