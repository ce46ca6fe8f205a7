import type { PdfArray, PdfDictionary, PdfObject, PdfReference } from './kinds.ts'
import { nameOf, nameText, ours, theirs } from './library.ts'
import { asArray, asDictionary, asName, asNumber, asReference, asText } from './objects.ts'

/** An entry as it stands; a reference is not followed. */
export const entry = (dictionary: PdfDictionary | undefined, key: string): PdfObject | undefined =>
  dictionary && ours(theirs(dictionary).get(nameOf(key)))

/** An entry, or what it refers to. */
export const lookUp = (dictionary: PdfDictionary | undefined, key: string): PdfObject | undefined =>
  dictionary && ours(theirs(dictionary).lookup(nameOf(key)))

export const hasEntry = (dictionary: PdfDictionary, key: string): boolean =>
  theirs(dictionary).has(nameOf(key))

export const setEntry = (dictionary: PdfDictionary, key: string, value: PdfObject): void =>
  theirs(dictionary).set(nameOf(key), theirs(value))

export const removeEntry = (dictionary: PdfDictionary, key: string): void =>
  void theirs(dictionary).delete(nameOf(key))

/** All entries as they stand, in the order in which they are written. */
export const entriesOf = (
  dictionary: PdfDictionary | undefined,
): readonly (readonly [key: string, value: PdfObject])[] =>
  dictionary
    ? theirs(dictionary)
        .entries()
        .map(([key, value]) => [nameText(key), ours(value)] as const)
    : []

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
