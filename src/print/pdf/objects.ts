import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFNumber,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'
import type { PdfArray, PdfDictionary, PdfObject, PdfReference } from './kinds.ts'
import { nameText, theirs } from './library.ts'

// What an object is: each of these gives nothing for an object of another kind, and none of them
// follows references.

export function asName(object: PdfObject | undefined): string | undefined {
  const is = theirs(object)
  return is instanceof PDFName ? nameText(is) : undefined
}

export function asNumber(object: PdfObject | undefined): number | undefined {
  const is = theirs(object)
  return is instanceof PDFNumber ? is.asNumber() : undefined
}

/** What a string says, decoded. */
export function asText(object: PdfObject | undefined): string | undefined {
  const is = theirs(object)
  return is instanceof PDFString || is instanceof PDFHexString ? is.decodeText() : undefined
}

export const asDictionary = (object: PdfObject | undefined): PdfDictionary | undefined =>
  theirs(object) instanceof PDFDict ? (object as PdfDictionary) : undefined

export const asArray = (object: PdfObject | undefined): PdfArray | undefined =>
  theirs(object) instanceof PDFArray ? (object as PdfArray) : undefined

export const asReference = (object: PdfObject | undefined): PdfReference | undefined =>
  theirs(object) instanceof PDFRef ? (object as PdfReference) : undefined

/** The number of the object that a reference leads to. */
export const objectNumber = (reference: PdfReference): number => theirs(reference).objectNumber

/** The items of an array as they stand, references among them. */
export const itemsOf = (array: PdfArray | undefined): readonly PdfObject[] =>
  array ? (theirs(array).asArray() as readonly unknown[] as readonly PdfObject[]) : []

export const setItem = (array: PdfArray, index: number, item: PdfObject): void =>
  theirs(array).set(index, theirs(item))
