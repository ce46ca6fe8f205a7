import type { LabelRange } from '../binder/page-numbers.ts'
import { setEntry } from '../pdf/dictionaries.ts'
import { catalogOf } from '../pdf/documents.ts'
import type { Literal, PdfDocument } from '../pdf/kinds.ts'
import { dictionary, unicodeText } from '../pdf/make-objects.ts'

const styles = { roman: 'r', decimal: 'D', none: undefined } as const

const plain: readonly LabelRange[] = [{ start: 0, style: 'decimal', prefix: '', first: 1 }]

/**
 * Page labels as they are printed (ISO 32000-1, 12.4.2).
 * @param ranges From 1 on when they are left out.
 */
export function labelPages(document: PdfDocument, ranges: readonly LabelRange[] = plain): void {
  const numbers = ranges.flatMap((r): Literal[] => [
    r.start,
    {
      S: styles[r.style],
      St: styles[r.style] && r.first,
      P: r.prefix === '' ? undefined : unicodeText(r.prefix),
    },
  ])
  setEntry(catalogOf(document), 'PageLabels', dictionary(document, { Nums: numbers }))
}
