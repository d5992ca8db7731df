// A logged lighting-up that tunes the build.
import { useState } from 'preact/hooks'
import { isRefusal, refusalWords } from './asked'
import type { Core } from './core'
import { OpenOrExample, TextBox } from './opening'
import type { Store } from './store'

const isLog = (name: string): boolean => name.startsWith('examples/logs/')
export function TunePlace({ store, core }: { store: Store; core: Core }) {
  const [log, setLog] = useState('')
  const [told, setTold] = useState('')
  const tune = async (): Promise<void> => {
    setTold('Working: this may take some seconds.')
    try {
      const reply = await core.ask('tune', { text: store.state.text, log, units: store.state.units }, 'work', 60)
      if (isRefusal(reply)) return setTold(refusalWords(reply))
      setTold(reply.told)
      store.set({ tuned: reply.tuned })
    } catch (error) {
      setTold(`Nothing is tuned: ${String(error)}`)
    }
  }
  const example = store.state.form?.examples.find(one => isLog(one.name))
  return (
    <div class="tuning">
      <p class="lead">
        Type or open the log of a lighting-up: times, temperatures, pressures. What it teaches is used from then on.
      </p>
      <OpenOrExample label="Open a log" example={example} taken={setLog} />
      <TextBox id="log" label="The log" rows={14} text={log} typed={setLog} />
      <p class="row">
        <button type="button" disabled={log.trim() === ''} onClick={() => void tune()}>
          Tune the build
        </button>
        {store.state.tuned && (
          <button type="button" onClick={() => store.set({ tuned: '' })}>
            Forget what it taught
          </button>
        )}
      </p>
      <pre class="told" role="status" tabIndex={0}>
        {told}
      </pre>
    </div>
  )
}
