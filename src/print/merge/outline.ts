import { dictionaryAt, referenceAt, removeEntry, setEntry } from '../pdf/dictionaries.ts'
import { catalogOf, reserveNumber, resolve, setObject } from '../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { dictionary } from '../pdf/make-objects.ts'
import { asDictionary } from '../pdf/objects.ts'
import { movedReference, type Offsets } from './moved-copy.ts'

/** The bookmarks of several documents on their way into one. */
export type OutlineMerge = {
  readonly root: PdfReference
  /** Bookmarks of the first level, in their order. */
  readonly bookmarks: PdfReference[]
}

export const startOutline = (document: PdfDocument): OutlineMerge => ({
  root: reserveNumber(document),
  bookmarks: [],
})

const bookmarkAt = (document: PdfDocument, reference: PdfReference): PdfDictionary => {
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

/** Adds the bookmarks of a source whose objects have been copied. */
export function addBookmarks(
  merge: OutlineMerge,
  to: PdfDocument,
  source: PdfDocument,
  by: Offsets,
): void {
  for (const bookmark of topBookmarks(source)) {
    const moved = movedReference(bookmark, by)
    setEntry(bookmarkAt(to, moved), 'Parent', merge.root)
    merge.bookmarks.push(moved)
  }
}

function link(bookmark: PdfDictionary, to: 'Prev' | 'Next', other: PdfReference | undefined): void {
  if (other) setEntry(bookmark, to, other)
  else removeEntry(bookmark, to)
}

/** Chains all bookmarks and hangs them into the document. */
export function hangBookmarks({ root, bookmarks }: OutlineMerge, document: PdfDocument): void {
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
