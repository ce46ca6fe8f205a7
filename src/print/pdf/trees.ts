import { arrayAt } from './dictionaries.ts'
import { resolve } from './documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from './kinds.ts'
import { asDictionary, asReference, itemsOf } from './objects.ts'

export type Pair = readonly [key: PdfObject, value: PdfObject]

/**
 * Pairs of a number tree (`Nums`) or a name tree (`Names`), in their order (ISO 32000-1, 7.9.6 and
 * 7.9.7).
 */
export function treePairs(
  document: PdfDocument,
  tree: PdfDictionary | undefined,
  leaf: 'Nums' | 'Names',
): readonly Pair[] {
  if (!tree) return []
  const flat = itemsOf(arrayAt(tree, leaf))
  const own = flat.flatMap((key, i): Pair[] => {
    const value = flat[i + 1]
    return i % 2 === 0 && value !== undefined ? [[key, value]] : []
  })
  const kids = itemsOf(arrayAt(tree, 'Kids')).map((kid) => asDictionary(resolve(document, kid)))
  return [...own, ...kids.flatMap((kid) => treePairs(document, kid, leaf))]
}

/** The objects that a tree is made of, its root first. */
export function treeReferences(
  document: PdfDocument,
  root: PdfObject | undefined,
): readonly PdfReference[] {
  const reference = asReference(root)
  if (!reference) return []
  const kids = itemsOf(arrayAt(asDictionary(resolve(document, reference)), 'Kids'))
  return [reference, ...kids.flatMap((kid) => treeReferences(document, kid))]
}
