import type {
  Literal,
  LiteralRecord,
  PdfArray,
  PdfDictionary,
  PdfDocument,
  PdfObject,
  PdfReference,
} from './kinds.ts'
import {
  type Dictionary,
  inside,
  nameOf,
  type Objects,
  outside,
  refer,
  type Value,
} from './values.ts'

export const name = (text: string): PdfObject => outside(nameOf(text))

export const number = (value: number): PdfObject => outside(value as Value)

/** A string of plain letters, written in round brackets. */
export const plainText = (text: string): PdfObject => outside({ kind: 'text', said: text })

/** Bytes as a string, from their hexadecimal digits. */
export const hexadecimal = (digits: string): PdfObject => outside({ kind: 'digits', digits })

/** A string of any letters, written as hexadecimal UTF-16. */
export function unicodeText(text: string): PdfObject {
  const bytes = Buffer.from(`\uFEFF${text}`, 'utf16le').swap16()
  return hexadecimal(bytes.toString('hex').toUpperCase())
}

export const nothing: PdfObject = outside(null as Value)

/** The reference to an object of the first generation. */
export const referenceTo = (objectNumber: number): PdfReference => outside(refer(objectNumber))

const isList = (literal: Literal): literal is readonly Literal[] => Array.isArray(literal)

/** Whether it is an object already: records of literals have no kind. */
const isObject = (literal: PdfObject | LiteralRecord): literal is PdfObject =>
  literal === nothing || 'kind' in literal

function made(home: Objects, literal: Literal): Value {
  if (typeof literal === 'string') return nameOf(literal)
  if (typeof literal === 'number' || typeof literal === 'boolean') return literal
  if (isList(literal)) return literal.map((item) => made(home, item))
  return isObject(literal) ? inside(literal) : madeDictionary(home, literal)
}

function madeDictionary(home: Objects, record: LiteralRecord): Dictionary {
  const entries: Value[] = []
  for (const [key, value] of Object.entries(record))
    if (value !== undefined) entries.push(nameOf(key), made(home, value))
  return { kind: 'dictionary', home, entries }
}

/** A dictionary of a document; it stands nowhere yet. */
export const dictionary = (document: PdfDocument, entries: LiteralRecord): PdfDictionary =>
  outside(madeDictionary(inside(document).objects, entries))

/** An array of a document; it stands nowhere yet. */
export const array = (document: PdfDocument, items: readonly Literal[]): PdfArray => {
  const { objects } = inside(document)
  return items.map((item) => made(objects, item)) as unknown as PdfArray
}
