import {
  dictionaryAt,
  entry,
  numberAt,
  referenceAt,
  removeEntry,
  setEntry,
} from '../../pdf/dictionaries.ts'
import { addObject, removeObject, resolve, setObject } from '../../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from '../../pdf/kinds.ts'
import { array, dictionary, name, nothing, number } from '../../pdf/make-objects.ts'
import { asDictionary, asNumber, asReference } from '../../pdf/objects.ts'
import { pagesOf } from '../../pdf/pages.ts'
import { treePairs, treeReferences } from '../../pdf/trees.ts'
import type { Annotated, Element, Item, Structure } from './structure.ts'

type Writing = {
  readonly document: PdfDocument
  /** Keys of pages in the parent tree, and the parents of their content by its number. */
  readonly pages: ReadonlyMap<PdfReference, { readonly key: number; readonly parents: PdfObject[] }>
  /** Entries of the parent tree by their keys, but for those of pages. */
  readonly parents: Map<number, PdfObject>
  readonly kept: Set<PdfReference>
  nextKey: number
}

function startWriting(document: PdfDocument, root: PdfDictionary): Writing {
  const pages = new Map(
    pagesOf(document).flatMap(({ reference, dictionary }) => {
      const key = numberAt(dictionary, 'StructParents')
      return key === undefined ? [] : [[reference, { key, parents: [] as PdfObject[] }] as const]
    }),
  )
  const ofPages = new Set([...pages.values()].map(({ key }) => key))
  const parents = new Map(
    treePairs(document, dictionaryAt(root, 'ParentTree'), 'Nums').flatMap(([at, value]) => {
      const key = asNumber(at)
      return key === undefined || ofPages.has(key) ? [] : [[key, value] as const]
    }),
  )
  const nextKey = Math.max(-1, ...parents.keys(), ...ofPages) + 1
  return { document, pages, parents, kept: new Set(), nextKey }
}

/** How an annotation stands among the kids of its element, which it is told in return. */
function hangAnnotation(writing: Writing, { object, page }: Annotated, on: PdfReference) {
  const annotation = asDictionary(resolve(writing.document, object))
  if (!annotation) throw new Error('an element holds an annotation that is not there')
  const key = numberAt(annotation, 'StructParent') ?? writing.nextKey++
  setEntry(annotation, 'StructParent', number(key))
  writing.parents.set(key, on)
  return dictionary(writing.document, { Type: 'OBJR', Obj: object, Pg: page })
}

/** @param own The page that the element names, whose content it need not name again. */
function hangItem(
  writing: Writing,
  kid: Item,
  on: PdfReference,
  own: PdfReference | undefined,
): PdfObject {
  if (kid.kind === 'object') return hangAnnotation(writing, kid, on)
  if (kid.kind === 'element') {
    hangElement(writing, kid, on)
    return kid.reference
  }
  const page = writing.pages.get(kid.page)
  if (page) page.parents[kid.mcid] = on
  return kid.page === own
    ? number(kid.mcid)
    : dictionary(writing.document, { Type: 'MCR', Pg: kid.page, MCID: kid.mcid })
}

function hangElement(writing: Writing, element: Element, parent: PdfReference): void {
  const { dictionary, reference, kids, type } = element
  writing.kept.add(reference)
  const page = kids.find((k) => k.kind === 'content')?.page
  const items = kids.map((kid) => hangItem(writing, kid, reference, page))
  setEntry(dictionary, 'S', name(type))
  setEntry(dictionary, 'P', parent)
  if (page === undefined) removeEntry(dictionary, 'Pg')
  else setEntry(dictionary, 'Pg', page)
  const [first] = items
  if (first === undefined) removeEntry(dictionary, 'K')
  else setEntry(dictionary, 'K', items.length === 1 ? first : array(writing.document, items))
}

/** The parent tree as one flat leaf, in place of the one that there was. */
function writeParentTree({ document, pages, parents }: Writing, root: PdfDictionary): void {
  for (const page of pages.values())
    parents.set(
      page.key,
      array(
        document,
        Array.from(page.parents, (p) => p ?? nothing),
      ),
    )
  const sorted = [...parents].sort(([a], [b]) => a - b)
  const tree = dictionary(document, { Nums: sorted.flat() })
  const was = referenceAt(root, 'ParentTree')
  if (was) {
    for (const reference of treeReferences(document, was)) removeObject(document, reference)
    setObject(document, was, tree)
  } else setEntry(root, 'ParentTree', addObject(document, tree))
  setEntry(root, 'ParentTreeNextKey', number((sorted.at(-1)?.[0] ?? -1) + 1))
}

/** The tree of ids without those of elements that have been taken out. */
function writeIds({ document, kept }: Writing, root: PdfDictionary): void {
  const ids = treePairs(document, dictionaryAt(root, 'IDTree'), 'Names').filter(([, element]) => {
    const reference = asReference(element)
    return reference !== undefined && kept.has(reference)
  })
  for (const reference of treeReferences(document, entry(root, 'IDTree')))
    removeObject(document, reference)
  if (ids.length > 0)
    setEntry(root, 'IDTree', addObject(document, dictionary(document, { Names: ids.flat() })))
  else removeEntry(root, 'IDTree')
}

/**
 * Writes a changed structure back: elements with their kids and parents, and from them the parent
 * tree anew.
 * @throws Error when an element holds an annotation that is not in the document.
 */
export function writeStructure(document: PdfDocument, structure: Structure): void {
  const { root, rootReference, tops, all } = structure
  const writing = startWriting(document, root)
  for (const top of tops) hangElement(writing, top, rootReference)
  for (const { reference } of all)
    if (!writing.kept.has(reference)) removeObject(document, reference)
  writeParentTree(writing, root)
  setEntry(
    root,
    'K',
    array(
      document,
      tops.map((t) => t.reference),
    ),
  )
  writeIds(writing, root)
}
