import { dictionaryAt, referenceAt } from './dictionaries.ts'
import { catalogOf, resolve } from './documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from './kinds.ts'
import { asDictionary } from './objects.ts'

/** @throws Error when there is none under this reference. */
export const bookmarkAt = (document: PdfDocument, reference: PdfReference): PdfDictionary => {
  const bookmark = asDictionary(resolve(document, reference))
  if (!bookmark) throw new Error('a bookmark is not there')
  return bookmark
}

/** The bookmarks of the first level, in their order. */
export function topBookmarks(document: PdfDocument): readonly PdfReference[] {
  const found: PdfReference[] = []
  let next = referenceAt(dictionaryAt(catalogOf(document), 'Outlines'), 'First')
  while (next) {
    found.push(next)
    next = referenceAt(bookmarkAt(document, next), 'Next')
  }
  return found
}
