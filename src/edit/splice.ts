import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  parseDocument,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml'
import type { Path } from '../read/read-yaml.ts'
import { addToList, addToMap, firstLine } from './add.ts'
import { dataWith } from './data-with.ts'
import { colonEnd, endOf, hasNoValue, isFlow, lineEnding, lineStart, startOf } from './places.ts'
import { removed } from './remove.ts'
import { type Value, written } from './written.ts'

/** What is to become of an entry: its new value, or nothing, which removes it. */
export type Change = { readonly path: Path; readonly value: Value | undefined }

/** The text with the change; or why it was not made, in which case nothing may be written. */
export type Spliced =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: string }

/** A text with a stretch of it exchanged. */
const exchanged = (text: string, from: number, to: number, by: string): string =>
  text.slice(0, from) + by + text.slice(to)

const read = (text: string): Document.Parsed =>
  parseDocument(text, { prettyErrors: false, strict: true, uniqueKeys: true, merge: false })

const pairOf = (map: YAMLMap, key: string | number): Pair | undefined =>
  map.items.find((p) => isScalar(p.key) && String(p.key.value) === String(key))

/** Puts a value in place of the one that stands there. */
function replaced(text: string, node: unknown, value: Value, inBraces: boolean): string {
  const [from, to] = [startOf(node), endOf(text, node)]
  if (isFlow(node) || isScalar(node)) return exchanged(text, from, to, written(value, inBraces))
  // A group or list over several lines gives way to one line behind its key.
  const above = text.slice(0, from).trimEnd()
  const isInline = lineStart(text, from) < lineStart(text, above.length) + 1 && above.endsWith('-')
  return exchanged(
    text,
    isInline ? from : above.length,
    to,
    `${isInline ? '' : ' '}${written(value, inBraces)}`,
  )
}

type Way = {
  readonly text: string
  readonly path: Path
  readonly value: Value
  readonly eol: string
}

/** The group made of what is still missing of a path. */
const nested = (path: Path, value: Value): Value =>
  path.reduceRight<Value>(
    (inner, step) => (typeof step === 'number' ? [inner] : { [step]: inner }),
    value,
  )

function set(node: unknown, at: number, inBraces: boolean, way: Way): string | undefined {
  const { text, path, value, eol } = way
  const [step, ...rest] = path.slice(at)
  if (step === undefined) return replaced(text, node, value, inBraces)
  const within = inBraces || isFlow(node)
  if (isMap(node)) {
    const pair = pairOf(node, step)
    if (!pair) return addToMap(text, node, String(step), nested(rest, value), eol)
    if (!hasNoValue(pair)) return set(pair.value, at + 1, within, way)
    const made = nested(rest, value)
    return exchanged(text, colonEnd(text, pair), colonEnd(text, pair), ` ${written(made, within)}`)
  }
  if (isSeq(node) && typeof step === 'number') {
    const item = node.items[step]
    if (item !== undefined) return set(item, at + 1, within, way)
    return step === node.items.length
      ? addToList(text, node as YAMLSeq, nested(rest, value), eol)
      : undefined
  }
  return undefined
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/**
 * Changes, adds or removes one entry of a YAML file. Every other byte stays: remarks, order, quotes,
 * line ends. A group that an entry leaves empty goes with it; groups on the way that are not there
 * yet are made; a number one beyond a list adds to it. The result is read back, and refused where it
 * does not say exactly what was meant.
 */
export function splice(text: string, { path, value }: Change): Spliced {
  const doc = read(text)
  if (doc.errors.length > 0) return { ok: false, why: 'the file cannot be read as it stands' }
  const before: unknown = doc.toJS() ?? {}
  const meant = dataWith(before, path, value)
  if (meant === undefined) return { ok: false, why: `there is no entry ${path.join('.')}` }
  const eol = lineEnding(text)
  const made =
    value === undefined
      ? removed(text, doc, path)
      : doc.contents === null
        ? firstLine(text, nested(path, value), eol)
        : set(doc.contents, 0, false, { text, path, value, eol })
  if (made === undefined) return { ok: false, why: `${path.join('.')} cannot stand where it would` }
  const after = read(made)
  return after.errors.length === 0 && same(after.toJS() ?? {}, meant.data)
    ? { ok: true, text: made }
    : { ok: false, why: `${path.join('.')} cannot be written without changing something else` }
}
