import { PDFDict, type PDFDocument, PDFName, PDFNumber, type PDFObject } from '@cantoo/pdf-lib'

/** Shows the bookmarks when the document opens, with only the first level unfolded. */
export function closeOutline(document: PDFDocument): void {
  const outline = document.catalog.lookupMaybe(PDFName.of('Outlines'), PDFDict)
  if (!outline) return
  let top = 0
  let ref: PDFObject | undefined = outline.get(PDFName.of('First'))
  while (ref) {
    const item: PDFObject | undefined = document.context.lookup(ref)
    if (!(item instanceof PDFDict)) break
    top++
    const count = item.get(PDFName.of('Count'))
    if (count instanceof PDFNumber && count.asNumber() > 0)
      item.set(PDFName.of('Count'), PDFNumber.of(-count.asNumber()))
    ref = item.get(PDFName.of('Next'))
  }
  outline.set(PDFName.of('Count'), PDFNumber.of(top))
  document.catalog.set(PDFName.of('PageMode'), PDFName.of('UseOutlines'))
}
