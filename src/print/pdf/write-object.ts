import type { PdfDictionary } from './kinds.ts'
import { inside, type Name, type Value } from './values.ts'

/** How an object is written into another document than the one that it stands in. */
export type Move = {
  /** Number of the object that a reference leads to; nothing where none has taken its place. */
  readonly reference: (objectNumber: number) => number | undefined
  /** Key of the parent tree (ISO 32000-1, 14.7.4.4). */
  readonly parentKey: (key: number) => number
  /** Id of a structure element, or any other string. */
  readonly text: (said: string) => string
}

const parentKeys: ReadonlySet<string | undefined> = new Set(['StructParent', 'StructParents'])

/** A number without an exponent, which a PDF does not know. */
function numberText(value: number): string {
  const text = String(value)
  return text.includes('e') ? value.toFixed(10).replace(/\.?0+$/, '') : text
}

/** An object as it stands in a file (ISO 32000-1, 7.3), one character a byte; of a stream nothing. */
export function objectText(value: Value, move?: Move, key?: Name): string {
  if (typeof value === 'number')
    return move && parentKeys.has(key?.text) ? String(move.parentKey(value)) : numberText(value)
  if (value === null || typeof value === 'boolean') return String(value)
  if (Array.isArray(value)) {
    let text = '['
    for (let i = 0; i < value.length; i++)
      text += `${i === 0 ? '' : ' '}${objectText(value[i] as Value, move)}`
    return `${text}]`
  }
  if (value.kind === 'name') return value.code
  if (value.kind === 'reference') {
    const number = move ? move.reference(value.number) : value.number
    return number === undefined ? 'null' : `${number} 0 R`
  }
  if (value.kind === 'text') return `(${move ? move.text(value.said) : value.said})`
  if (value.kind === 'digits') return `<${value.digits}>`
  if (value.kind === 'stream') throw new Error('a stream stands in another object')
  const { entries } = value
  let text = '<<'
  for (let i = 0; i < entries.length; i += 2) {
    const name = entries[i] as Name
    text += `${name.code} ${objectText(entries[i + 1] as Value, move, name)}`
  }
  return `${text}>>`
}

/** The entries of a dictionary as they stand in a file. */
export const insideText = (dictionary: PdfDictionary, move: Move): string =>
  objectText(inside(dictionary), move).slice('<<'.length, -'>>'.length)
