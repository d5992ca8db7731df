// The text itself: what the form writes, and what the terminal reads.
import type { Store } from './store'

export function TextPlace({ store }: { store: Store }) {
  const faults = store.state.refusal?.faults ?? []
  return (
    <div class="text">
      <p class="lead">
        The very text that a file holds. Behind a <code>#</code> stands what is for you alone.
      </p>
      <label for="text">The description as text</label>
      <textarea
        id="text"
        spellcheck={false}
        rows={30}
        value={store.state.text}
        aria-invalid={faults.length > 0}
        aria-describedby="text-faults"
        onInput={event => store.edit(event.currentTarget.value, 'text')}
      />
      <ul id="text-faults" class="faults">
        {faults.map(fault => (
          <li class="fault" key={`${fault.line}-${fault.column}-${fault.message}`}>
            Line {fault.line}: {fault.key ? `${fault.key}: ` : ''}
            {fault.message}
            {fault.help ? `: ${fault.help}` : ''}
          </li>
        ))}
      </ul>
    </div>
  )
}
