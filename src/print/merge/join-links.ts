import { PDFDict, type PDFDocument, PDFHexString, PDFName, PDFString } from '@cantoo/pdf-lib'

/**
 * Takes all links out, where only some pages of a binder are printed and most would lead to pages
 * that are not there.
 */
export function dropLinks(document: PDFDocument): void {
  for (const page of document.getPages()) page.node.delete(PDFName.of('Annots'))
}

/** Turns links that left their part for another into links inside the joined document. */
export function joinLinks(document: PDFDocument, elsewhere: string): void {
  for (const page of document.getPages()) {
    const annots = page.node.Annots()
    for (let i = 0; i < (annots?.size() ?? 0); i++) {
      const annotation = annots?.lookup(i, PDFDict)
      const uri = annotation?.lookupMaybe(PDFName.of('A'), PDFDict)?.get(PDFName.of('URI'))
      if (
        !(uri instanceof PDFString || uri instanceof PDFHexString) ||
        !uri.decodeText().startsWith(elsewhere)
      )
        continue
      annotation?.delete(PDFName.of('A'))
      annotation?.set(
        PDFName.of('Dest'),
        PDFName.of(decodeURIComponent(uri.decodeText().slice(elsewhere.length))),
      )
    }
  }
}
