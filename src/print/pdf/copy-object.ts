import {
  PDFArray,
  PDFDict,
  type PDFName,
  type PDFObject,
  PDFPageLeaf,
  PDFRawStream,
} from '@cantoo/pdf-lib'
import type { PdfDocument, PdfObject } from './kinds.ts'
import { contextOf, nameText, ours, theirs } from './library.ts'

/**
 * What a leaf of an object (reference, number, name, string) becomes in the copy.
 * @param key The entry of a dictionary in which it stands; nothing for items of arrays.
 */
export type LeafCopy = (leaf: PdfObject, key: string | undefined) => PdfObject

/** A copy of an object for a document: dictionaries, arrays and streams anew, their leaves changed. */
export function copyObject(object: PdfObject, to: PdfDocument, leaf: LeafCopy): PdfObject {
  const context = contextOf(to)
  const entries = (dict: PDFDict): Map<PDFName, PDFObject> =>
    new Map(dict.entries().map(([key, value]) => [key, copy(value, key)]))
  function copy(object: PDFObject, key?: PDFName): PDFObject {
    if (object instanceof PDFPageLeaf)
      return PDFPageLeaf.fromMapWithContext(entries(object), context, false)
    if (object instanceof PDFDict) return PDFDict.fromMapWithContext(entries(object), context)
    if (object instanceof PDFRawStream)
      return PDFRawStream.of(
        PDFDict.fromMapWithContext(entries(object.dict), context),
        object.contents,
      )
    if (object instanceof PDFArray) {
      const items = PDFArray.withContext(context)
      for (const item of object.asArray()) items.push(copy(item))
      return items
    }
    return theirs(leaf(ours(object), key && nameText(key)))
  }
  return ours(copy(theirs(object)))
}
