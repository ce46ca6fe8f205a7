import type { PdfArray, PdfDictionary, PdfObject, PdfReference } from './kinds.ts'
import { asArray, asDictionary, asName, asNumber, asReference, asText } from './objects.ts'
import {
  followed,
  inside,
  type Name,
  nameOf,
  outside,
  removeValue,
  setValue,
  type Value,
  valueAt,
} from './values.ts'

/** An entry as it stands; a reference is not followed. */
export const entry = (dictionary: PdfDictionary | undefined, key: string): PdfObject | undefined =>
  dictionary && outside(valueAt(inside(dictionary), nameOf(key)))

/** An entry, or what it refers to. */
export function lookUp(dictionary: PdfDictionary | undefined, key: string): PdfObject | undefined {
  if (!dictionary) return undefined
  const own = inside(dictionary)
  return outside(followed(own.home, valueAt(own, nameOf(key))))
}

export const hasEntry = (dictionary: PdfDictionary, key: string): boolean =>
  valueAt(inside(dictionary), nameOf(key)) !== undefined

export const setEntry = (dictionary: PdfDictionary, key: string, value: PdfObject): void =>
  setValue(inside(dictionary), nameOf(key), inside(value))

export const removeEntry = (dictionary: PdfDictionary, key: string): void =>
  removeValue(inside(dictionary), nameOf(key))

/** All entries as they stand, in the order in which they are written. */
export function entriesOf(
  dictionary: PdfDictionary | undefined,
): readonly (readonly [key: string, value: PdfObject])[] {
  const all = dictionary ? inside(dictionary).entries : []
  const found: (readonly [string, PdfObject])[] = []
  for (let i = 0; i < all.length; i += 2)
    found.push([(all[i] as Name).text, outside(all[i + 1] as Value)])
  return found
}

// Entries of one kind, looked up; nothing where there is none or one of another kind.

type At<T> = (dictionary: PdfDictionary | undefined, key: string) => T | undefined

export const nameAt: At<string> = (dictionary, key) => asName(lookUp(dictionary, key))

export const numberAt: At<number> = (dictionary, key) => asNumber(lookUp(dictionary, key))

export const textAt: At<string> = (dictionary, key) => asText(lookUp(dictionary, key))

export const dictionaryAt: At<PdfDictionary> = (dictionary, key) =>
  asDictionary(lookUp(dictionary, key))

export const arrayAt: At<PdfArray> = (dictionary, key) => asArray(lookUp(dictionary, key))

/** The reference itself that stands in an entry. */
export const referenceAt: At<PdfReference> = (dictionary, key) =>
  asReference(entry(dictionary, key))
