// What the core is asked and what it answers: the page's half of bindings/asked.hpp.
export interface Fault {
  line: number
  column: number
  width: number
  key: string
  message: string
  help: string
}
export interface Assumed {
  key: string
  value: string
  band: string
  why: string
}
export interface Chief {
  title: string
  verdict: string
  figure: string
  band: string
}
export interface Key {
  key: string
  form: 'part' | 'quantity' | 'count' | 'words' | 'text' | 'table'
  meaning: string
  expert: boolean
  example?: string
  how?: string
  kind?: string
  units?: string
  limits?: [string, string]
  words?: string[]
}
export interface Example {
  name: string
  text: string
}
export interface Form {
  keys: Key[]
  examples: Example[]
  first: string[]
  version: string
}
export interface Answered {
  verdict: string
  sentence: string
  samples: number
  checks: number
  assumed: Assumed[]
  answers: Chief[]
  parts: { [part in Part]?: string } // of the report, each a document whose body holds it
  sketches?: Sketch[]
}
export type Part = 'head' | 'pictures' | 'cautions' | 'appendix'
/// A drawing of a part of the description with the places marked where it is measured.
export interface Sketch {
  part: string
  title: string
  html: string
}
export interface MadeFile {
  name: string
  what: string
  text: string
  base64?: boolean
}
export interface Setting {
  key: string
  value: string
}
export interface LeverValue {
  words: string
  value: string
  settings: Setting[]
}
export interface Lever {
  key: string
  now: number
  effect: number
  values: LeverValue[]
}

/// What stands in place of an answer: faults of the text, a question without an answer, a mistake of the program's own.
export interface Refusal {
  faults?: Fault[]
  told?: string
  refused?: string
  error?: string
}
export type Reply<T> = T | Refusal

export interface Questions {
  form: [{}, Form]
  answer: [
    {
      text: string
      name: string
      tuned: string
      units: string
      samples: number
      whole: boolean
      parts: (Part | 'sketches')[]
    },
    Answered
  ]
  json: [{ text: string; tuned?: string; samples: number }, { json: string }]
  files: [
    { text: string; name: string; tuned: string; units: string; samples: number; paper: string; draft: boolean },
    { files: MadeFile[]; not_drawn: string }
  ]
  levers: [{ text: string; tuned: string; units: string }, { levers: Lever[] }]
  tune: [{ text: string; log: string; units: string }, { told: string; tuned: string }]
  choose: [{ text: string; samples: number }, { html: string; files: MadeFile[] }]
}
export const isRefusal = <T extends object>(reply: Reply<T>): reply is Refusal =>
  'faults' in reply || 'refused' in reply || 'error' in reply
export const refusalWords = (refusal: Refusal): string => refusal.told ?? refusal.refused ?? refusal.error ?? ''
