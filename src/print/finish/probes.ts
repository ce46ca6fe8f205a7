import { PDFDict, type PDFDocument, PDFName, PDFRef } from '@cantoo/pdf-lib'

/** Points. An anchor of one CSS pixel measures 0.75. */
const probeSize = 1

const isProbe = (annotation: PDFDict): boolean => {
  if (
    annotation.get(PDFName.of('Subtype')) !== PDFName.of('Link') ||
    annotation.has(PDFName.of('StructParent'))
  )
    return false
  const rect = annotation.get(PDFName.of('Rect'))
  const [x0, y0, x1, y1] =
    annotation.context
      .lookup(rect)
      ?.toString()
      .match(/-?[\d.]+/g)
      ?.map(Number) ?? []
  return (
    x0 !== undefined &&
    y0 !== undefined &&
    x1 !== undefined &&
    y1 !== undefined &&
    Math.abs(x1 - x0) <= probeSize &&
    Math.abs(y1 - y0) <= probeSize
  )
}

/**
 * Takes out the links of anchors that nobody sees: they only make the browser note where things
 * stand. The places noted stay. Pages left with annotations are walked in the order of the
 * structure.
 */
export function dropProbes(document: PDFDocument): void {
  const { context } = document
  for (const { node } of document.getPages()) {
    const all = node.Annots()?.asArray() ?? []
    const kept = all.filter((ref) => !isProbe(context.lookup(ref, PDFDict)))
    for (const ref of all) if (ref instanceof PDFRef && !kept.includes(ref)) context.delete(ref)
    if (kept.length === 0) node.delete(PDFName.of('Annots'))
    else {
      if (kept.length < all.length) node.set(PDFName.of('Annots'), context.obj(kept))
      node.set(PDFName.of('Tabs'), PDFName.of('S'))
    }
  }
}
