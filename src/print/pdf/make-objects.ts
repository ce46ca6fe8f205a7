import {
  PDFArray,
  PDFBool,
  type PDFContext,
  PDFDict,
  PDFHexString,
  PDFNull,
  PDFNumber,
  PDFObject,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'
import type {
  Literal,
  LiteralRecord,
  PdfArray,
  PdfDictionary,
  PdfDocument,
  PdfObject,
  PdfReference,
} from './kinds.ts'
import { contextOf, nameOf, ours } from './library.ts'

export const name = (text: string): PdfObject => ours(nameOf(text))

export const number = (value: number): PdfObject => ours(PDFNumber.of(value))

/** A string of plain letters, written in round brackets. */
export const plainText = (text: string): PdfObject => ours(PDFString.of(text))

/** A string of any letters, written as hexadecimal UTF-16. */
export const unicodeText = (text: string): PdfObject => ours(PDFHexString.fromText(text))

/** Bytes as a string, from their hexadecimal digits. */
export const hexadecimal = (digits: string): PdfObject => ours(PDFHexString.of(digits))

export const nothing: PdfObject = ours(PDFNull as PDFObject)

/**
 * The library finds a reference by a text made of its numbers, which for the tens of thousands of a
 * binder takes longer than all else.
 */
const references: PDFRef[] = []

/** The reference to an object of the first generation. */
export function referenceTo(objectNumber: number): PdfReference {
  const known = references[objectNumber] ?? PDFRef.of(objectNumber)
  references[objectNumber] = known
  return ours(known)
}

const isList = (literal: Literal): literal is readonly Literal[] => Array.isArray(literal)

function made(context: PDFContext, literal: Literal): PDFObject {
  if (typeof literal === 'string') return nameOf(literal)
  if (typeof literal === 'number') return PDFNumber.of(literal)
  if (typeof literal === 'boolean') return literal ? PDFBool.True : PDFBool.False
  if (isList(literal)) return madeArray(context, literal)
  return literal instanceof PDFObject ? literal : madeDictionary(context, literal as LiteralRecord)
}

function madeArray(context: PDFContext, items: readonly Literal[]): PDFArray {
  const array = PDFArray.withContext(context)
  for (const item of items) array.push(made(context, item))
  return array
}

function madeDictionary(context: PDFContext, entries: LiteralRecord): PDFDict {
  const dictionary = PDFDict.withContext(context)
  for (const [key, value] of Object.entries(entries))
    if (value !== undefined) dictionary.set(nameOf(key), made(context, value))
  return dictionary
}

/** A dictionary of a document; it stands nowhere yet. */
export const dictionary = (document: PdfDocument, entries: LiteralRecord): PdfDictionary =>
  ours(madeDictionary(contextOf(document), entries))

/** An array of a document; it stands nowhere yet. */
export const array = (document: PdfDocument, items: readonly Literal[]): PdfArray =>
  ours(madeArray(contextOf(document), items))
