import { type PDFDocument, PDFHexString, PDFName } from '@cantoo/pdf-lib'
import type { LabelRange } from '../binder/page-numbers.ts'

const styles = { roman: 'r', decimal: 'D', none: undefined } as const

/** Page labels as they are printed (ISO 32000-1, 12.4.2). */
export function labelPages(document: PDFDocument, ranges: readonly LabelRange[]): void {
  const { context } = document
  const nums = ranges.flatMap((r) => [
    r.start,
    {
      ...(styles[r.style] === undefined ? {} : { S: styles[r.style], St: r.first }),
      ...(r.prefix === '' ? {} : { P: PDFHexString.fromText(r.prefix) }),
    },
  ])
  document.catalog.set(PDFName.of('PageLabels'), context.obj({ Nums: nums }))
}
