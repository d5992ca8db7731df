// Files out of the page, and what this browser keeps.
import type { MadeFile } from './asked'
import type { Store } from './store'

export function save(name: string, content: BlobPart, type: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([content], { type }))
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  window.setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
}
export function saveMade(file: MadeFile): void {
  const bytes = file.base64 ? Uint8Array.from(atob(file.text), c => c.charCodeAt(0)) : file.text
  save(file.name, bytes, file.base64 ? 'application/pdf' : 'text/plain;charset=utf-8')
}

const slot = 'lumwright.build'
function kept(): string | undefined {
  try {
    return localStorage.getItem(slot) ?? undefined
  } catch {
    return undefined // a browser that keeps nothing for files
  }
}
/// Offers what was kept, and keeps what is written from then on: never in place of a build that was not decided upon.
export function keepBuilds(store: Store): void {
  const offered = kept()
  if (offered !== undefined && offered !== store.state.text && offered.trim() !== '') store.set({ offered })
  store.listenToEdits(() => {
    if (store.state.offered !== undefined) return
    try {
      localStorage.setItem(slot, store.state.text)
    } catch {
      // nothing is kept then; saving as a file still works
    }
  })
}
