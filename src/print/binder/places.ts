import { dictionaryAt, entriesOf } from '../pdf/dictionaries.ts'
import { catalogOf, resolve } from '../pdf/documents.ts'
import type { PdfDocument, PdfObject } from '../pdf/kinds.ts'
import { asArray, itemsOf } from '../pdf/objects.ts'
import { pagesOf } from '../pdf/pages.ts'

/**
 * The page, from 0, of every named place of a document as a browser has printed it: every id that
 * some link leads to is one.
 */
export function placesOf(document: PdfDocument): ReadonlyMap<string, number> {
  const pages = new Map<PdfObject | undefined, number>(
    pagesOf(document).map(({ reference }, i) => [reference, i]),
  )
  const named = entriesOf(dictionaryAt(catalogOf(document), 'Dests'))
  return new Map(
    named.flatMap(([name, value]) => {
      const page = pages.get(itemsOf(asArray(resolve(document, value)))[0])
      return page === undefined ? [] : [[name, page] as const]
    }),
  )
}
