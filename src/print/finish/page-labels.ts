import { PDFName, type PDFDocument } from '@cantoo/pdf-lib'

/** Page labels as they are printed: roman in front, arabic from the body on. */
export function labelPages(document: PDFDocument, bodyStart: number): void {
  const nums = bodyStart > 0 ? [0, { S: 'r' }, bodyStart, { S: 'D', St: 1 }] : [0, { S: 'D', St: 1 }]
  document.catalog.set(PDFName.of('PageLabels'), document.context.obj({ Nums: nums }))
}
