import {
  type PDFArray,
  type PDFContext,
  type PDFDict,
  type PDFDocument,
  PDFName,
  type PDFObject,
  type PDFRef,
  type PDFStream,
} from '@cantoo/pdf-lib'
import type {
  PdfArray,
  PdfDictionary,
  PdfDocument,
  PdfObject,
  PdfReference,
  PdfStream,
} from './kinds.ts'

// Our kinds are the library's own objects under other names. Only the files of this folder look
// through; the library is exchanged here and in them.

type Theirs<T> = T extends PdfDocument
  ? PDFDocument
  : T extends PdfDictionary
    ? PDFDict
    : T extends PdfArray
      ? PDFArray
      : T extends PdfStream
        ? PDFStream
        : T extends PdfReference
          ? PDFRef
          : T extends PdfObject
            ? PDFObject
            : undefined

/** The library's object behind one of ours. */
export const theirs = <T extends PdfObject | PdfDocument | undefined>(ours: T): Theirs<T> =>
  ours as unknown as Theirs<T>

type Ours<T> = T extends PDFDocument
  ? PdfDocument
  : T extends PDFDict
    ? PdfDictionary
    : T extends PDFArray
      ? PdfArray
      : T extends PDFStream
        ? PdfStream
        : T extends PDFRef
          ? PdfReference
          : T extends PDFObject
            ? PdfObject
            : undefined

/** One of the library's objects as ours. */
export const ours = <T extends PDFObject | PDFDocument | undefined>(theirs: T): Ours<T> =>
  theirs as unknown as Ours<T>

/** Where the library keeps the objects of a document. */
export const contextOf = (document: PdfDocument): PDFContext => theirs(document).context

const names = new Map<string, PDFName>()

/** The library decodes a name whenever it is asked for; a binder asks for the same ones often. */
export function nameOf(text: string): PDFName {
  const known = names.get(text)
  if (known) return known
  const name = PDFName.of(text)
  names.set(text, name)
  return name
}

const texts = new Map<PDFName, string>()

/** What a name says. */
export function nameText(name: PDFName): string {
  const known = texts.get(name)
  if (known !== undefined) return known
  const text = name.decodeText()
  texts.set(name, text)
  return text
}
