import { PDFArray, PDFDict, type PDFDocument, PDFName, PDFNumber } from '@cantoo/pdf-lib'

/**
 * The browser measures link targets from the text area, so they lie too high by the top margin
 * (points).
 */
export function lowerDestinations(document: PDFDocument, marginTop: number): void {
  const dests = document.catalog.lookupMaybe(PDFName.of('Dests'), PDFDict)
  for (const [, value] of dests?.entries() ?? []) {
    const at = document.context.lookup(value)
    const y = at instanceof PDFArray ? at.get(3) : undefined
    if (at instanceof PDFArray && y instanceof PDFNumber)
      at.set(3, PDFNumber.of(Math.round((y.asNumber() - marginTop) * 100) / 100))
  }
}
