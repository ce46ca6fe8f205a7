import { dictionaryAt, entriesOf } from '../pdf/dictionaries.ts'
import { catalogOf, resolve } from '../pdf/documents.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { number } from '../pdf/make-objects.ts'
import { asArray, asNumber, itemsOf, setItem } from '../pdf/objects.ts'

/**
 * The browser measures link targets from the text area, so they lie too high by the top margin
 * (points).
 */
export function lowerDestinations(document: PdfDocument, marginTop: number): void {
  for (const [, value] of entriesOf(dictionaryAt(catalogOf(document), 'Dests'))) {
    const place = asArray(resolve(document, value))
    const y = asNumber(itemsOf(place)[3])
    if (place && y !== undefined) setItem(place, 3, number(Math.round((y - marginTop) * 100) / 100))
  }
}
