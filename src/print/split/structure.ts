import { setEntry } from '../pdf/dictionaries.ts'
import { addObject, catalogOf, reserveNumber, setObject } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { dictionary } from '../pdf/make-objects.ts'
import { asText } from '../pdf/objects.ts'
import type { Pair } from '../pdf/trees.ts'

/** The structure tree of a document that is put together. */
export type NewStructure = {
  /** The one Document under which all elements come to stand. */
  readonly top: PdfReference
  readonly elements: PdfReference[]
  /** Pairs of the parent tree and of the tree of ids. */
  readonly parents: Pair[]
  readonly ids: Pair[]
  /** Key of the parent tree from which on none is taken. */
  nextParent: number
}

export const startStructure = (document: PdfDocument): NewStructure => ({
  top: reserveNumber(document),
  elements: [],
  parents: [],
  ids: [],
  nextParent: 0,
})

const byText = ([a]: Pair, [b]: Pair): number => ((asText(a) ?? '') < (asText(b) ?? '') ? -1 : 1)

/** Hangs the whole structure into the document. */
export function hangStructure(structure: NewStructure, document: PdfDocument): void {
  const { top, elements, parents, ids, nextParent } = structure
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
