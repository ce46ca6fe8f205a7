import { arrayAt, hasEntry, nameAt, removeEntry, setEntry } from '../pdf/dictionaries.ts'
import { removeObject, resolve } from '../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject } from '../pdf/kinds.ts'
import { array, name } from '../pdf/make-objects.ts'
import { asDictionary, asNumber, asReference, itemsOf } from '../pdf/objects.ts'
import { pagesOf } from '../pdf/pages.ts'

/** Points. An anchor of one CSS pixel measures 0.75. */
const probeSize = 1

function isProbe(annotation: PdfDictionary): boolean {
  if (nameAt(annotation, 'Subtype') !== 'Link' || hasEntry(annotation, 'StructParent')) return false
  const [x0, y0, x1, y1] = itemsOf(arrayAt(annotation, 'Rect')).map(asNumber)
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
export function dropProbes(document: PdfDocument): void {
  for (const { dictionary } of pagesOf(document)) {
    const all = itemsOf(arrayAt(dictionary, 'Annots'))
    const isKept = (item: PdfObject): boolean => {
      const annotation = asDictionary(resolve(document, item))
      return !annotation || !isProbe(annotation)
    }
    const kept = all.filter(isKept)
    for (const item of all) {
      const reference = asReference(item)
      if (reference && !kept.includes(item)) removeObject(document, reference)
    }
    if (kept.length === 0) removeEntry(dictionary, 'Annots')
    else {
      if (kept.length < all.length) setEntry(dictionary, 'Annots', array(document, kept))
      setEntry(dictionary, 'Tabs', name('S'))
    }
  }
}
