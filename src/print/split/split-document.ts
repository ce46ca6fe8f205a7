import { readStructure } from '../finish/structure/read-structure.ts'
import { type Element, itemsIn } from '../finish/structure/structure.ts'
import { topBookmarks } from '../pdf/bookmarks.ts'
import { copyReachable } from '../pdf/copy-reachable.ts'
import { arrayAt, dictionaryAt, numberAt, referenceAt } from '../pdf/dictionaries.ts'
import { catalogOf, emptyDocument, resolve } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { asDictionary, asNumber, asReference, itemsOf } from '../pdf/objects.ts'
import { annotationsOf, type PdfPage, pagesOf, setPages } from '../pdf/pages.ts'
import { highestKey, type Pair, treePairs } from '../pdf/trees.ts'
import { hangBookmarks, startOutline } from './outline.ts'
import { hangStructure, startStructure } from './structure.ts'

/** What of a document is parted with its pages. */
type Whole = {
  readonly source: PdfDocument
  /** Elements of the first level, with the pages that their content is on. */
  readonly elements: readonly {
    readonly element: Element
    readonly pages: readonly PdfReference[]
  }[]
  readonly tops: readonly PdfReference[]
  /** Pairs of the parent tree and of the tree of ids. */
  readonly parents: readonly Pair[]
  readonly ids: readonly Pair[]
  /** Bookmarks of the first level, with the page that each leads to. */
  readonly bookmarks: readonly { readonly reference: PdfReference; readonly page: PdfReference }[]
}

function wholeOf(source: PdfDocument): Whole {
  const structure = readStructure(source)
  const kids = structure?.tops.flatMap((top) => top.kids) ?? []
  const pagesIn = (element: Element): PdfReference[] =>
    [...itemsIn(element.kids)].flatMap((i) => (i.kind === 'element' ? [] : [i.page]))
  return {
    source,
    elements: kids.flatMap((element) =>
      element.kind === 'element' ? [{ element, pages: pagesIn(element) }] : [],
    ),
    tops: structure?.tops.map((top) => top.reference) ?? [],
    parents: treePairs(source, dictionaryAt(structure?.root, 'ParentTree'), 'Nums'),
    ids: treePairs(source, dictionaryAt(structure?.root, 'IDTree'), 'Names'),
    bookmarks: topBookmarks(source).flatMap((reference) => {
      const place = arrayAt(asDictionary(resolve(source, reference)), 'Dest')
      const page = asReference(itemsOf(place)[0])
      return page ? [{ reference, page }] : []
    }),
  }
}

/** Keys of the parent tree under which pages and their annotations stand. */
const keysOf = (source: PdfDocument, pages: readonly PdfPage[]): ReadonlySet<number | undefined> =>
  new Set(
    pages.flatMap((page) => [
      numberAt(page.dictionary, 'StructParents'),
      ...annotationsOf(source, page).map((a) => numberAt(a.dictionary, 'StructParent')),
    ]),
  )

/** @throws Error when something stands on these pages and on others too. */
function own<T extends { readonly pages: readonly PdfReference[] }>(
  all: readonly T[],
  pages: ReadonlySet<PdfReference>,
): readonly T[] {
  const here = all.filter((item) => item.pages.some((p) => pages.has(p)))
  if (here.every((item) => item.pages.every((p) => pages.has(p)))) return here
  throw new Error('an element stands on pages of two documents')
}

function partOf(whole: Whole, pages: readonly PdfPage[]): PdfDocument {
  const { source, parents } = whole
  const to = emptyDocument()
  const [structure, outline] = [startStructure(to), startOutline(to)]
  const tree = [catalogOf(source), catalogOf(to)].map((c) => referenceAt(c, 'Pages'))
  const [from, into] = tree
  if (!from || !into) throw new Error('a document has no page tree')
  // What leads from the pages to all the others leads to what takes its place.
  const made = new Map<PdfReference, PdfReference>([[from, into]])
  for (const { dictionary } of pages) {
    const node = referenceAt(dictionary, 'Parent')
    if (node) made.set(node, into)
  }
  for (const top of whole.tops) made.set(top, structure.top)
  const old = referenceAt(catalogOf(source), 'Outlines')
  if (old) made.set(old, outline.root)
  const references = new Set(pages.map((p) => p.reference))
  for (const { reference, page } of whole.bookmarks)
    if (!references.has(page)) made.set(reference, outline.root)
  const { copy, copied } = copyReachable(source, to, made)
  setPages(
    to,
    pages.map((p) => copied(p.reference)),
  )
  for (const { element } of own(whole.elements, references))
    structure.elements.push(copied(element.reference))
  const keys = keysOf(source, pages)
  const kept = parents.filter(([key]) => keys.has(asNumber(key)))
  structure.parents.push(...kept.map(([key, value]): Pair => [key, copy(value)]))
  structure.nextParent = highestKey(kept) + 1
  for (const [id, element] of whole.ids) {
    const reference = asReference(element)
    const moved = reference && made.get(reference)
    if (moved) structure.ids.push([id, moved])
  }
  for (const { reference, page } of whole.bookmarks)
    if (references.has(page)) outline.bookmarks.push(copied(reference))
  hangStructure(structure, to)
  hangBookmarks(outline, to)
  return to
}

/**
 * Parts a document whose content is in order into documents of so many pages each, with their own
 * structure and bookmarks. Fonts stay those of the whole.
 * @throws Error when the pages are not as many, or something stands on pages of two.
 */
export function splitDocument(
  source: PdfDocument,
  counts: readonly number[],
): readonly PdfDocument[] {
  const pages = pagesOf(source)
  const wanted = counts.reduce((sum, n) => sum + n, 0)
  if (pages.length !== wanted) throw new Error(`${pages.length} pages instead of ${wanted}`)
  const whole = wholeOf(source)
  const parts: PdfDocument[] = []
  let start = 0
  for (const count of counts) {
    parts.push(partOf(whole, pages.slice(start, start + count)))
    start += count
  }
  return parts
}
