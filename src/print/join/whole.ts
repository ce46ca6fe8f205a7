import { referenceAt } from '../pdf/dictionaries.ts'
import { catalogOf, emptyDocument, reserveNumber } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'

/** A document that is to hold several, with the numbers that each of these refers to. */
export type Whole = {
  readonly document: PdfDocument
  /** The page tree. */
  readonly pages: PdfReference
  /** The one structure element under which all others come to stand. */
  readonly top: PdfReference
  /** The root of the bookmarks. */
  readonly outline: PdfReference
}

/** A whole without anything in it; its numbers are always the same. */
export function startWhole(): Whole {
  const document = emptyDocument()
  const pages = referenceAt(catalogOf(document), 'Pages')
  if (!pages) throw new Error('a document has no page tree')
  return { document, pages, top: reserveNumber(document), outline: reserveNumber(document) }
}
