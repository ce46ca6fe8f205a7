import type { PdfDocument, PdfObject } from './kinds.ts'
import { type Dictionary, inside, type Name, outside, type Value } from './values.ts'

/**
 * What a leaf of an object (reference, number, name, string) becomes in the copy.
 * @param key The entry of a dictionary in which it stands; nothing for items of arrays.
 */
export type LeafCopy = (leaf: PdfObject, key: string | undefined) => PdfObject

/** A copy of an object for a document: dictionaries, arrays and streams anew, their leaves changed. */
export function copyObject(object: PdfObject, to: PdfDocument, leaf: LeafCopy): PdfObject {
  const home = inside(to).objects
  function copyDictionary(entries: readonly Value[]): Dictionary {
    const copies = entries.map((value, i) =>
      i % 2 === 0 ? value : copy(value, entries[i - 1] as Name),
    )
    return { kind: 'dictionary', home, entries: copies }
  }
  function copy(value: Value, key?: Name): Value {
    if (Array.isArray(value)) return value.map((item) => copy(item))
    if (typeof value === 'object' && value !== null) {
      if (value.kind === 'dictionary') return copyDictionary(value.entries)
      if (value.kind === 'stream')
        return { ...value, dictionary: copyDictionary(value.dictionary.entries) }
    }
    return inside(leaf(outside(value), key?.text))
  }
  return outside(copy(inside(object)))
}
