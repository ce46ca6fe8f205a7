import { hasEntry, lookUp, nameAt, setEntry } from '../pdf/dictionaries.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { unicodeText } from '../pdf/make-objects.ts'
import { asName, asText } from '../pdf/objects.ts'
import { annotationsOf, pagesOf } from '../pdf/pages.ts'

/** Gives every link words of its own for those who cannot see where it stands. */
export function describeLinks(document: PdfDocument): void {
  for (const page of pagesOf(document)) {
    for (const { dictionary } of annotationsOf(document, page)) {
      if (nameAt(dictionary, 'Subtype') !== 'Link' || hasEntry(dictionary, 'Contents')) continue
      const target = lookUp(dictionary, 'Dest')
      const place = asName(target) ?? asText(target) ?? ''
      const words = place === '' ? 'Link' : `Go to ${place.replaceAll('-', ' ')}`
      setEntry(dictionary, 'Contents', unicodeText(words))
    }
  }
}
