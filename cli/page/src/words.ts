// Keys put into words, and the order in which one measures.
import type { Key } from './asked'

export interface Group {
  id: string
  title: string
  keys: Key[]
}
const groups: [string, string, string[]][] = [
  ['name', 'Name', ['name']],
  ['engine', 'Engine', ['engine']],
  ['chimney', 'Chimney', ['engine.chimney']],
  ['fire', 'Fire', ['fuel']],
  ['adapter', 'Tube and box', ['adapter']],
  ['fan', 'Fan', ['fan']],
  ['supply', 'Pack and wires', ['supply']],
  ['want', 'What you want', ['want']],
  ['place', 'The air on the day', ['place']],
  ['measured', 'Measured in place of it', ['draught', 'load']]
]
const below = (key: string, part: string): boolean => key === part || key.startsWith(`${part}.`)
/// The group of the longest part that a key lies in.
export const groupOf = (key: string): string | undefined =>
  groups
    .flatMap(([id, , parts]) => parts.filter(part => below(key, part)).map(part => ({ id, length: part.length })))
    .sort((a, b) => b.length - a.length)[0]?.id
/// Every key in exactly one group.
export function grouped(keys: Key[]): Group[] {
  const out = groups.map(([id, title]) => ({ id, title, keys: keys.filter(key => groupOf(key.key) === id) }))
  const rest = keys.filter(key => groupOf(key.key) === undefined)
  return rest.length > 0 ? [...out, { id: 'others', title: 'And also', keys: rest }] : out
}
/// "engine.boiler.own_blower_from" -> "Own blower from".
export function labelOf(key: string): string {
  const words = key.slice(key.lastIndexOf('.') + 1).replaceAll('_', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
/// "supply.step_up.output" -> "Step up output".
export const longLabelOf = (key: string): string => labelOf(key.split('.').slice(-2).join(' '))
export const partOf = (key: string): string => key.slice(0, Math.max(key.lastIndexOf('.'), 0))
export const idOf = (key: string): string => `field-${key.replaceAll('.', '-')}`
/// A name that every file system takes.
export function fileName(text: string): string {
  return (
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'build'
  )
}
