import { isSeq, parseDocument, type YAMLSeq } from 'yaml'
import type { Path } from '../read/read-yaml.ts'
import { endOf, isFlow, lineStart, nextLine, startOf } from './places.ts'
import type { Spliced } from './splice.ts'

type Stretch = readonly [from: number, to: number]

/** Where an entry of a list stands: all of its lines, or its text in brackets. */
function stretchOf(text: string, list: YAMLSeq, index: number): Stretch {
  const item = list.items[index]
  if (isFlow(list)) return [startOf(item), endOf(text, item)]
  const dash = text.lastIndexOf('-', startOf(item) - 1)
  return [lineStart(text, dash), nextLine(text, endOf(text, item))]
}

/** The text with two stretches exchanged, the first of which stands before the second. */
function exchanged(text: string, first: Stretch, second: Stretch): string {
  const [a, b] = [text.slice(...first), text.slice(...second)]
  const eol = /\r\n/.test(text) ? '\r\n' : '\n'
  // The last line of a file may lack its end, which then belongs to whatever comes before it.
  const isOpen = a.endsWith('\n') && !b.endsWith('\n')
  const [before, after] = isOpen ? [b + eol, a.slice(0, -eol.length)] : [b, a]
  return (
    text.slice(0, first[0]) +
    before +
    text.slice(first[1], second[0]) +
    after +
    text.slice(second[1])
  )
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** Data with two entries of a list exchanged. */
function meant(data: unknown, path: Path, from: number, to: number): unknown {
  const [step, ...rest] = path
  if (step === undefined) {
    const items = data as readonly unknown[]
    return items.map((item, i) => (i === from ? items[to] : i === to ? items[from] : item))
  }
  const inner = meant((data as Readonly<Record<string, unknown>>)[step], rest, from, to)
  if (Array.isArray(data)) return data.map((item, i) => (i === step ? inner : item))
  return { ...(data as object), [step]: inner }
}

/**
 * Exchanges two entries of a list of a YAML file, each with the remark in its own line; every other
 * byte stays. The result is read back, and refused where it does not say exactly that.
 */
export function moved(text: string, path: Path, from: number, to: number): Spliced {
  const doc = parseDocument(text, { prettyErrors: false, strict: true, uniqueKeys: true })
  const list = doc.errors.length === 0 ? doc.getIn(path, true) : undefined
  if (!isSeq(list) || !list.items[from] || !list.items[to])
    return { ok: false, why: `there is no such entry of ${path.join('.')}` }
  const [first, second] = from < to ? [from, to] : [to, from]
  const made = exchanged(text, stretchOf(text, list, first), stretchOf(text, list, second))
  const after = parseDocument(made, { prettyErrors: false, strict: true, uniqueKeys: true })
  return after.errors.length === 0 && same(after.toJS(), meant(doc.toJS(), path, from, to))
    ? { ok: true, text: made }
    : { ok: false, why: `${path.join('.')} cannot be ordered without changing something else` }
}
