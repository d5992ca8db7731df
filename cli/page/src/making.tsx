// What is taken along: templates, sheet, report and tables as files.
import { useState } from 'preact/hooks'
import { isRefusal, refusalWords, type MadeFile } from './asked'
import type { Core } from './core'
import { saveMade } from './saving'
import type { Store } from './store'

interface Made {
  files: MadeFile[]
  not_drawn: string
  text: string
}
export function MakePlace({ store, core }: { store: Store; core: Core }) {
  const [made, setMade] = useState<Made | undefined>(undefined)
  const [told, setTold] = useState('')
  const [paper, setPaper] = useState('A4')
  const [draft, setDraft] = useState(false)
  const make = async (): Promise<void> => {
    setTold('Working: this may take some seconds.')
    const { text, name, tuned, units } = store.state
    try {
      const reply = await core.ask(
        'files',
        { text, name: `${name}.yaml`, tuned, units, samples: 256, paper, draft },
        'work',
        60
      )
      if (isRefusal(reply)) return setTold(refusalWords(reply))
      setMade({ ...reply, text })
      setTold(reply.not_drawn ? `No drawings: ${reply.not_drawn}` : `${reply.files.length} files are ready.`)
    } catch (error) {
      setTold(`Nothing was made: ${String(error)}`)
    }
  }
  return (
    <div class="making">
      <p class="lead">
        Templates at true size, the sheet for the workshop, the report, and tables. Print templates without scaling
        and check the bars.
      </p>
      <p class="row">
        <label for="paper">Paper</label>
        <select id="paper" value={paper} onChange={event => setPaper(event.currentTarget.value)}>
          <option>A4</option>
          <option>Letter</option>
        </select>
        <label class="tick">
          <input type="checkbox" checked={draft} onChange={event => setDraft(event.currentTarget.checked)} /> draw
          what fails too, stamped DRAFT
        </label>
        <button type="button" onClick={() => void make()}>
          Make the files
        </button>
      </p>
      <p role="status">{told}</p>
      {made && made.text !== store.state.text && <p class="fault">These are of the build before the last change.</p>}
      {made && (
        <ul class="files">
          {made.files.map(file => (
            <li key={file.name}>
              <button type="button" onClick={() => saveMade(file)}>
                {file.name}
              </button>{' '}
              {file.what}
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
