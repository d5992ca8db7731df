// The text of a description, read and written key by key: what its owner wrote beside a value, comments above all,
// stays.
import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  parseDocument,
  type Document,
  type Node,
  type Pair,
  type YAMLMap
} from 'yaml'

const longest = 200_000 // beyond this the form is not filled in; the core refuses such a text anyway

function parsed(text: string): Document | undefined {
  if (text.length > longest) return undefined
  try {
    const document = parseDocument(text, { keepSourceTokens: false, prettyErrors: false, strict: false })
    return document.errors.length === 0 ? document : undefined
  } catch {
    return undefined
  }
}
/// What is typed into a field as it stands in a file: plain where that reads the same, else in quotes.
export function asWritten(typed: string): string {
  const value = typed.trim()
  const read = parsed(`{ k: ${value} }`)?.get('k', true) as Node | undefined
  if (isScalar(read) && read.type === 'PLAIN' && read.source === value) return value
  if (isSeq(read) && read.flow && !/[#\n]/.test(value)) return value
  return JSON.stringify(value)
}

const most_kept = 6
const kept: Description[] = [] // a move of a lever asks for the same few texts again and again

export class Description {
  private readonly document: Document | undefined
  static of(text: string): Description {
    const at = kept.findIndex(one => one.text === text)
    const found = at < 0 ? new Description(text) : kept.splice(at, 1)[0]!
    kept.unshift(found)
    kept.length = Math.min(kept.length, most_kept)
    return found
  }
  private constructor(readonly text: string) {
    this.document = parsed(text)
  }
  get readable(): boolean {
    const root = this.document?.contents
    return this.document !== undefined && (root === null || isMap(root) || (isScalar(root) && root.value === null))
  }
  /// What stands behind a key, as written; empty where nothing does.
  value(key: string): string {
    const node = this.node(key)
    if (!node) return ''
    if (isScalar(node))
      return node.value === null ? '' : node.type === 'PLAIN' ? (node.source ?? '') : String(node.value)
    if (isAlias(node)) return `*${node.source}`
    const [from, to] = node.range!
    const whole = this.text.slice(from, to)
    return isSeq(node) && !node.flow ? JSON.stringify(node.toJSON()).replaceAll('"', '') : whole.replace(/\s+/g, ' ')
  }
  /// The text with this behind the key; with nothing typed the key is not known any more.
  with(key: string, typed: string): string {
    const value = typed.trim()
    if (value === this.value(key)) return this.text
    const changed = value === '' ? this.without(key) : this.written(key, asWritten(value))
    const read = Description.of(changed)
    return read.readable && read.value(key) === value ? changed : this.rewritten(key, value)
  }
  withAll(settings: { key: string; value: string }[]): string {
    return settings.reduce((text, one) => Description.of(text).with(one.key, one.value), this.text)
  }

  private node(key: string): Node | undefined {
    if (!this.readable) return undefined
    try {
      return (this.document!.getIn(key.split('.'), true) as Node | undefined) ?? undefined
    } catch {
      return undefined // something on the way to it is no map
    }
  }
  private splice(from: number, to: number, text: string): string {
    return this.text.slice(0, from) + text + this.text.slice(to)
  }
  /// The innermost map on the way to the key, and what is left of the way.
  private innermost(key: string): {
    map: YAMLMap | undefined
    pair: Pair<Node, Node | null> | undefined
    rest: string[]
  } {
    let map = isMap(this.document!.contents) ? this.document!.contents : undefined
    const rest = key.split('.')
    while (map) {
      const pair = map.items.find(one => isScalar(one.key) && String(one.key.value) === rest[0]) as
        | Pair<Node, Node | null>
        | undefined
      if (!pair || !isMap(pair.value) || rest.length === 1) return { map, pair, rest }
      map = pair.value
      rest.shift()
    }
    return { map, pair: undefined, rest }
  }
  private written(key: string, value: string): string {
    const { map, pair, rest } = this.innermost(key)
    const inBraces = (keys: string[]): string =>
      keys.length === 0 ? value : `{ ${keys[0]}: ${inBraces(keys.slice(1))} }`
    if (!map)
      return `${this.text}${this.text === '' || this.text.endsWith('\n') ? '' : '\n'}${rest[0]}: ${inBraces(rest.slice(1))}\n`
    if (pair) {
      const [from, to] = pair.value?.range ?? [pair.key.range![1] + 1, pair.key.range![1] + 1]
      const blank = this.text[from - 1] === ':' ? ' ' : ''
      return this.splice(
        from,
        to,
        blank + inBraces(rest.slice(1)) + (from === to && !map.flow && /[^\s]/.test(this.text[to] ?? '\n') ? ' ' : '')
      )
    }
    return map.flow
      ? this.addedInBraces(map, `${rest[0]}: ${inBraces(rest.slice(1))}`)
      : this.addedBelow(map, `${rest[0]}: ${inBraces(rest.slice(1))}`)
  }
  private endOf(pair: Pair<Node, Node | null>): number {
    return pair.value?.range?.[1] ?? pair.key.range![1]
  }
  private addedInBraces(map: YAMLMap, line: string): string {
    const last = map.items.at(-1) as Pair<Node, Node | null> | undefined
    if (!last) return this.splice(map.range![0], map.range![1], `{ ${line} }`)
    return this.splice(this.endOf(last), this.endOf(last), `, ${line}`)
  }
  private addedBelow(map: YAMLMap, line: string): string {
    const first = (map.items[0] as Pair<Node, Node | null>).key.range![0]
    const indent = ' '.repeat(first - (this.text.lastIndexOf('\n', first - 1) + 1))
    const end = this.endOf(map.items.at(-1) as Pair<Node, Node | null>)
    const line_end = this.text.indexOf('\n', Math.max(end - 1, 0))
    const at = line_end < 0 ? this.text.length : line_end
    return this.splice(at, at, `\n${indent}${line}`)
  }
  private without(key: string): string {
    const { map, pair } = this.innermost(key)
    if (!map || !pair) return this.text
    if (!map.flow) return this.splice(pair.key.range![1] + 1, this.endOf(pair), '')
    const at = map.items.indexOf(pair as never)
    const next = map.items[at + 1] as Pair<Node, Node> | undefined
    const before = map.items[at - 1] as Pair<Node, Node | null> | undefined
    if (next) return this.splice(pair.key.range![0], next.key.range![0], '')
    return this.splice(before ? this.endOf(before) : pair.key.range![0], this.endOf(pair), '')
  }
  /// The last resort: the whole text laid out anew, comments included.
  private rewritten(key: string, value: string): string {
    const document = parsed(this.text)
    if (!document) return this.text
    try {
      if (value === '') document.deleteIn(key.split('.'))
      else document.setIn(key.split('.'), value)
      return document.toString({ lineWidth: 0 })
    } catch {
      return this.text
    }
  }
}
