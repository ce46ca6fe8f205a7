import { arrayAt, dictionaryAt, entry, referenceAt, setEntry } from '../pdf/dictionaries.ts'
import {
  addObject,
  catalogOf,
  removeObject,
  reserveNumber,
  resolve,
  setObject,
} from '../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from '../pdf/kinds.ts'
import { dictionary, number } from '../pdf/make-objects.ts'
import { asArray, asDictionary, asNumber, asReference, asText, itemsOf } from '../pdf/objects.ts'
import { pagesOf } from '../pdf/pages.ts'
import { highestKey, type Pair, treePairs } from '../pdf/trees.ts'
import { movedCopy, movedReference, nodeNumber, type Offsets } from './moved-copy.ts'

/** The structure trees of several documents on their way into one. */
export type StructureMerge = {
  /** The one Document under which all elements come to stand. */
  readonly top: PdfReference
  readonly elements: PdfReference[]
  /** Pairs of the parent tree and of the tree of ids. */
  readonly parents: Pair[]
  readonly ids: Pair[]
  /** Keys of the parent tree, and numbers of ids, from which on none is taken. */
  nextParent: number
  nextNode: number
}

export const startStructure = (document: PdfDocument): StructureMerge => ({
  top: reserveNumber(document),
  elements: [],
  parents: [],
  ids: [],
  nextParent: 0,
  nextNode: 0,
})

/** A page without content has its key in the parent tree too, though the tree may not name it. */
function passPages(merge: StructureMerge, source: PdfDocument, by: Offsets): void {
  for (const { dictionary } of pagesOf(source)) {
    const key = asNumber(entry(dictionary, 'StructParents'))
    if (key !== undefined) merge.nextParent = Math.max(merge.nextParent, by.parent + key + 1)
  }
}

/** The browser puts all of a page into one Document; those of all sources become one. */
function addElements(
  merge: StructureMerge,
  to: PdfDocument,
  root: PdfDictionary,
  by: Offsets,
): void {
  const only = referenceAt(root, 'K')
  const tops = only ? [only] : itemsOf(arrayAt(root, 'K')).flatMap((t) => asReference(t) ?? [])
  for (const top of tops.map((t) => movedReference(t, by))) {
    const inside = entry(asDictionary(resolve(to, top)), 'K')
    const list = asArray(inside)
    const kids = list ? itemsOf(list) : inside === undefined ? [] : [inside]
    for (const kid of kids.flatMap((k) => asReference(k) ?? [])) {
      const element = asDictionary(resolve(to, kid))
      if (element) setEntry(element, 'P', merge.top)
      merge.elements.push(kid)
    }
    removeObject(to, top)
  }
}

/** Adds the structure of a source whose objects have been copied. */
export function addStructure(
  merge: StructureMerge,
  to: PdfDocument,
  source: PdfDocument,
  by: Offsets,
): void {
  passPages(merge, source, by)
  const root = dictionaryAt(catalogOf(source), 'StructTreeRoot')
  if (!root) return
  addElements(merge, to, root, by)
  const moved = (object: PdfObject): PdfObject => movedCopy(object, to, by)
  const parents = treePairs(source, dictionaryAt(root, 'ParentTree'), 'Nums')
  for (const [key, value] of parents)
    merge.parents.push([number((asNumber(key) ?? 0) + by.parent), moved(value)])
  merge.nextParent = Math.max(merge.nextParent, by.parent + highestKey(parents) + 1)
  for (const [id, element] of treePairs(source, dictionaryAt(root, 'IDTree'), 'Names')) {
    merge.ids.push([moved(id), moved(element)])
    merge.nextNode = Math.max(merge.nextNode, by.node + (nodeNumber(id) ?? 0) + 1)
  }
}

const byText = ([a]: Pair, [b]: Pair): number => ((asText(a) ?? '') < (asText(b) ?? '') ? -1 : 1)

/** Hangs the whole structure into the document. */
export function hangStructure(merge: StructureMerge, document: PdfDocument): void {
  const { top, elements, parents, ids, nextParent } = merge
  const made = (entries: Parameters<typeof dictionary>[1]) => dictionary(document, entries)
  const root = reserveNumber(document)
  setObject(document, top, made({ Type: 'StructElem', S: 'Document', P: root, K: elements }))
  const tree = made({
    Type: 'StructTreeRoot',
    K: top,
    ParentTree: addObject(document, made({ Nums: parents.flat() })),
    ParentTreeNextKey: nextParent,
  })
  const names = [...ids].sort(byText).flat()
  if (names.length > 0) setEntry(tree, 'IDTree', addObject(document, made({ Names: names })))
  setObject(document, root, tree)
  const catalog = catalogOf(document)
  setEntry(catalog, 'StructTreeRoot', root)
  setEntry(catalog, 'MarkInfo', made({ Marked: true }))
}
