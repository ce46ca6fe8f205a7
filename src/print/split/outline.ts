import { bookmarkAt } from '../pdf/bookmarks.ts'
import { removeEntry, setEntry } from '../pdf/dictionaries.ts'
import { catalogOf, reserveNumber, setObject } from '../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { dictionary } from '../pdf/make-objects.ts'

/** The bookmarks of a document that is put together. */
export type Outline = {
  readonly root: PdfReference
  /** Bookmarks of the first level, in their order. */
  readonly bookmarks: PdfReference[]
}

export const startOutline = (document: PdfDocument): Outline => ({
  root: reserveNumber(document),
  bookmarks: [],
})

function link(bookmark: PdfDictionary, to: 'Prev' | 'Next', other: PdfReference | undefined): void {
  if (other) setEntry(bookmark, to, other)
  else removeEntry(bookmark, to)
}

/** Chains all bookmarks and hangs them into the document. */
export function hangBookmarks({ root, bookmarks }: Outline, document: PdfDocument): void {
  bookmarks.forEach((reference, i) => {
    const bookmark = bookmarkAt(document, reference)
    link(bookmark, 'Prev', bookmarks[i - 1])
    link(bookmark, 'Next', bookmarks[i + 1])
  })
  const [first, last] = [bookmarks[0], bookmarks.at(-1)]
  if (!first || !last) return
  const outline = { Type: 'Outlines', First: first, Last: last, Count: bookmarks.length }
  setObject(document, root, dictionary(document, outline))
  setEntry(catalogOf(document), 'Outlines', root)
}
