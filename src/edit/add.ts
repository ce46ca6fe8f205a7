import type { YAMLMap, YAMLSeq } from 'yaml'
import { endOf, isFlow, lineEnd, lineStart, startOf } from './places.ts'
import { isDeep, type Value, written, writtenKey } from './written.ts'

const isGroup = (value: Value): value is { readonly [key: string]: Value } =>
  typeof value === 'object' && !Array.isArray(value)

/** The lines of a group's entries. */
const groupLines = (value: Value, indent: string): readonly string[] =>
  Object.entries(value).flatMap(([key, inner]) => linesOf(key, inner as Value, indent))

/** The lines of an entry of a list; a group that holds more than words stands over several. */
function itemLines(value: Value, indent: string): readonly string[] {
  const holdsMore = isGroup(value) && Object.values(value).some((v) => typeof v === 'object')
  if (!holdsMore) return [`${indent}- ${written(value)}`]
  const [first = '', ...rest] = groupLines(value, `${indent}  `)
  return [`${indent}- ${first.trimStart()}`, ...rest]
}

/** The lines of a new entry; a group in a group, or of the file itself, stands over several lines. */
function linesOf(key: string, value: Value, indent: string): readonly string[] {
  const name = writtenKey(key, false)
  const isBlock = isDeep(value) || isListOfGroups(value) || (indent === '' && isGroup(value))
  if (!isBlock) return [`${indent}${name}: ${written(value)}`]
  return [
    `${indent}${name}:`,
    ...(Array.isArray(value)
      ? value.flatMap((v: Value) => itemLines(v, `${indent}  `))
      : groupLines(value, `${indent}  `)),
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
  const lines = itemLines(value, indentAt(text, startOf(list)))
  return inserted(text, end, `${eol}${lines.join(eol)}`)
}

/** The first entry of a file that has none yet. */
export function firstLine(text: string, value: Value, eol: string): string {
  const lines = Object.entries(value).flatMap(([key, v]) => linesOf(key, v as Value, ''))
  const start = text === '' || text.endsWith('\n') || text === '\uFEFF' ? text : text + eol
  return `${start}${lines.join(eol)}${eol}`
}
