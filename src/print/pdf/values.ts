import type { PdfArray, PdfDictionary, PdfDocument, PdfObject, PdfReference } from './kinds.ts'

// What PDF objects are inside this folder (ISO 32000-1, 7.3). A binder is made of a quarter of a
// million of them: what is small is a plain value, names and references are made once, and a
// dictionary is one list. A general library took twice the time and memory over the same files.

export type Reference = { readonly kind: 'reference'; readonly number: number }

export type Name = {
  readonly kind: 'name'
  /** One character a byte. */
  readonly text: string
  /** As it stands in a file, with its slash. */
  readonly code: string
}

/** A string in round brackets, as it stands between them. */
type Text = { readonly kind: 'text'; readonly said: string }

/** A string in hexadecimal digits. */
type Digits = { readonly kind: 'digits'; readonly digits: string }

/** Objects that stand by themselves, by their numbers; nothing under numbers that are not taken. */
export type Objects = (Value | undefined)[]

export type Dictionary = {
  readonly kind: 'dictionary'
  /** Where its references lead. */
  readonly home: Objects
  /** Names and values by turns, in the order in which they are written. */
  readonly entries: Value[]
}

export type Stream = {
  readonly kind: 'stream'
  readonly dictionary: Dictionary
  readonly bytes: Uint8Array
}

export type Value =
  | number
  | boolean
  | null
  | Reference
  | Name
  | Text
  | Digits
  | Dictionary
  | Stream
  | Value[]

/** A document: its objects by their numbers, and what its trailer names. */
export type Holder = {
  readonly objects: Objects
  readonly root: Reference
  info: Reference | undefined
  id: Value[] | undefined
}

type Inside<T> = T extends PdfDocument
  ? Holder
  : T extends PdfDictionary
    ? Dictionary
    : T extends PdfArray
      ? Value[]
      : T extends PdfReference
        ? Reference
        : T extends PdfObject
          ? Value
          : undefined

/** What one of the objects that are passed around outside is in here. */
export const inside = <T extends PdfObject | PdfDocument | undefined>(outside: T): Inside<T> =>
  outside as unknown as Inside<T>

type Outside<T> = T extends Holder
  ? PdfDocument
  : T extends Dictionary
    ? PdfDictionary
    : T extends Reference
      ? PdfReference
      : T extends Value
        ? PdfObject
        : undefined

export const outside = <T extends Value | Holder | undefined>(inside: T): Outside<T> =>
  inside as unknown as Outside<T>

const references: Reference[] = []

/** The reference to an object of the first generation, always the same. */
export function refer(number: number): Reference {
  const known = references[number]
  if (known) return known
  const made: Reference = { kind: 'reference', number }
  references[number] = made
  return made
}

const names = new Map<string, Name>()

const irregular = /[^!-~]|[#()<>[\]{}/%]/g

const escaped = (character: string): string =>
  `#${character.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`

/** The name that says this (7.3.5), always the same. */
export function nameOf(text: string): Name {
  const known = names.get(text)
  if (known) return known
  // A copy: a piece of a file's text would hold all of it.
  const own = Buffer.from(text, 'latin1').toString('latin1')
  const made: Name = { kind: 'name', text: own, code: `/${own.replace(irregular, escaped)}` }
  names.set(own, made)
  return made
}

type Kinds = {
  reference: Reference
  name: Name
  text: Text
  digits: Digits
  dictionary: Dictionary
  stream: Stream
}

/** Whether a value is of a kind. */
export const isA = <K extends keyof Kinds>(value: Value | undefined, kind: K): value is Kinds[K] =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === kind

export function valueAt(dictionary: Dictionary, name: Name): Value | undefined {
  const { entries } = dictionary
  for (let i = 0; i < entries.length; i += 2) if (entries[i] === name) return entries[i + 1]
  return undefined
}

/** Sets an entry, in its place where there is one already. */
export function setValue({ entries }: Dictionary, name: Name, value: Value): void {
  for (let i = 0; i < entries.length; i += 2)
    if (entries[i] === name) {
      entries[i + 1] = value
      return
    }
  entries.push(name, value)
}

export function removeValue({ entries }: Dictionary, name: Name): void {
  for (let i = 0; i < entries.length; i += 2)
    if (entries[i] === name) {
      entries.splice(i, 2)
      return
    }
}

/** A value, or the one that a reference leads to. */
export const followed = (objects: Objects, value: Value | undefined): Value | undefined =>
  isA(value, 'reference') ? objects[value.number] : value
