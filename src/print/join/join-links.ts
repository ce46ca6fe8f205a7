import { dictionaryAt, removeEntry, setEntry, textAt } from '../pdf/dictionaries.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { name } from '../pdf/make-objects.ts'
import { annotationsOf, pagesOf } from '../pdf/pages.ts'

/**
 * Takes all links out, where only some pages of a binder are printed and most would lead to pages
 * that are not there.
 */
export function dropLinks(document: PdfDocument): void {
  for (const { dictionary } of pagesOf(document)) removeEntry(dictionary, 'Annots')
}

/** Turns links that left their part for another into links inside the joined document. */
export function joinLinks(document: PdfDocument, elsewhere: string): void {
  for (const page of pagesOf(document)) {
    for (const { dictionary } of annotationsOf(document, page)) {
      const address = textAt(dictionaryAt(dictionary, 'A'), 'URI')
      if (!address?.startsWith(elsewhere)) continue
      removeEntry(dictionary, 'A')
      setEntry(dictionary, 'Dest', name(decodeURIComponent(address.slice(elsewhere.length))))
    }
  }
}
