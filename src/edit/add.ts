import type { YAMLMap, YAMLSeq } from 'yaml'
import { endOf, isFlow, lineEnd, lineStart, startOf } from './places.ts'
import { isDeep, type Value, written, writtenKey } from './written.ts'

/** The lines of a new entry; a group in a group stands over several lines. */
function linesOf(key: string, value: Value, indent: string): readonly string[] {
  const name = writtenKey(key, false)
  if (!isDeep(value) && !isListOfGroups(value)) return [`${indent}${name}: ${written(value)}`]
  if (Array.isArray(value))
    return [`${indent}${name}:`, ...value.map((v: Value) => `${indent}  - ${written(v)}`)]
  return [
    `${indent}${name}:`,
    ...Object.entries(value).flatMap(([inner, v]) => linesOf(inner, v as Value, `${indent}  `)),
  ]
}

const isListOfGroups = (value: Value): boolean =>
  Array.isArray(value) && value.some((v) => typeof v === 'object')

/** Puts text behind an offset. */
const inserted = (text: string, at: number, what: string): string =>
  text.slice(0, at) + what + text.slice(at)

/** Puts something behind the last of what stands in brackets. */
function inBrackets(text: string, node: YAMLMap | YAMLSeq, what: string): string {
  const last = node.items.at(-1)
  if (last !== undefined) return inserted(text, endOf(text, last), `, ${what}`)
  const [from, to] = [startOf(node), endOf(text, node)]
  const made = text[from] === '{' ? `{ ${what} }` : `[${what}]`
  return text.slice(0, from) + made + text.slice(to)
}

/** Columns before an offset in its line; what stands there besides spaces is a dash. */
const indentAt = (text: string, at: number): string =>
  ' '.repeat(text.slice(lineStart(text, at), at).replace('\uFEFF', '').length)

/** A group with one entry more, behind its last. */
export function addToMap(
  text: string,
  map: YAMLMap,
  key: string,
  value: Value,
  eol: string,
): string {
  if (isFlow(map)) return inBrackets(text, map, `${writtenKey(key, true)}: ${written(value, true)}`)
  const lines = linesOf(key, value, indentAt(text, startOf(map)))
  const end = lineEnd(text, endOf(text, map))
  return inserted(text, end, `${eol}${lines.join(eol)}`)
}

/** A list with one value more, behind its last. */
export function addToList(text: string, list: YAMLSeq, value: Value, eol: string): string {
  if (isFlow(list)) return inBrackets(text, list, written(value, true))
  const end = lineEnd(text, endOf(text, list))
  return inserted(text, end, `${eol}${indentAt(text, startOf(list))}- ${written(value)}`)
}

/** The first entry of a file that has none yet. */
export function firstLine(text: string, value: Value, eol: string): string {
  const lines = Object.entries(value).flatMap(([key, v]) => linesOf(key, v as Value, ''))
  const start = text === '' || text.endsWith('\n') || text === '\uFEFF' ? text : text + eol
  return `${start}${lines.join(eol)}${eol}`
}
