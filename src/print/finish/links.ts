import { PDFDict, type PDFDocument, PDFHexString, PDFName, PDFString } from '@cantoo/pdf-lib'

/** Gives every link words of its own for those who cannot see where it stands. */
export function describeLinks(document: PDFDocument): void {
  const [subtype, link, contents, dest] = ['Subtype', 'Link', 'Contents', 'Dest'].map((n) =>
    PDFName.of(n),
  ) as [PDFName, PDFName, PDFName, PDFName]
  for (const page of document.getPages()) {
    const annots = page.node.Annots()
    for (let i = 0; i < (annots?.size() ?? 0); i++) {
      const annotation = annots?.lookup(i, PDFDict)
      if (!annotation || annotation.get(subtype) !== link || annotation.get(contents)) continue
      const target = annotation.get(dest)
      const name =
        target instanceof PDFName || target instanceof PDFString ? target.decodeText() : ''
      annotation.set(
        contents,
        PDFHexString.fromText(name === '' ? 'Link' : `Go to ${name.replaceAll('-', ' ')}`),
      )
    }
  }
}
