import {
  PDFArray,
  type PDFContext,
  PDFDict,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRef,
} from '@cantoo/pdf-lib'

/**
 * Pairs of a number tree (`Nums`) or a name tree (`Names`), in their order (ISO 32000-1, 7.9.6 and
 * 7.9.7).
 */
export function treePairs(
  tree: PDFDict | undefined,
  leaf: 'Nums' | 'Names',
): (readonly [PDFObject, PDFObject])[] {
  if (!tree) return []
  const flat = tree.lookupMaybe(PDFName.of(leaf), PDFArray)?.asArray() ?? []
  const own = flat.flatMap((key, i): (readonly [PDFObject, PDFObject])[] =>
    i % 2 === 0 && flat[i + 1] !== undefined ? [[key, flat[i + 1] as PDFObject]] : [],
  )
  const kids = tree.lookupMaybe(PDFName.of('Kids'), PDFArray)
  const below = Array.from({ length: kids?.size() ?? 0 }, (_, i) =>
    treePairs(kids?.lookupMaybe(i, PDFDict), leaf),
  ).flat()
  return [...own, ...below]
}

export const highestKey = (pairs: readonly (readonly [PDFObject, PDFObject])[]): number =>
  pairs.reduce(
    (most, [key]) => (key instanceof PDFNumber ? Math.max(most, key.asNumber()) : most),
    -1,
  )

/** The objects that a tree is made of, its root first. */
export function treeRefs(root: PDFObject | undefined, context: PDFContext): readonly PDFRef[] {
  if (!(root instanceof PDFRef)) return []
  const kids =
    context.lookupMaybe(root, PDFDict)?.lookupMaybe(PDFName.of('Kids'), PDFArray)?.asArray() ?? []
  return [root, ...kids.flatMap((kid) => treeRefs(kid, context))]
}
