import { bookmarkAt, topBookmarks } from '../pdf/bookmarks.ts'
import { arrayAt, dictionaryAt, entry, nameAt, removeEntry } from '../pdf/dictionaries.ts'
import { addObject, catalogOf, objectsOf, removeObject, resolve } from '../pdf/documents.ts'
import { informationReference } from '../pdf/information.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from '../pdf/kinds.ts'
import { dictionary, number } from '../pdf/make-objects.ts'
import {
  asArray,
  asDictionary,
  asNumber,
  asReference,
  asText,
  itemsOf,
  objectNumber,
} from '../pdf/objects.ts'
import { pagesOf } from '../pdf/pages.ts'
import { type WrittenObjects, writtenObjects } from '../pdf/save-document.ts'
import { type Pair, treePairs, treeReferences } from '../pdf/trees.ts'
import { insideText, type Move } from '../pdf/write-object.ts'
import { appendObjects, emptyPiece, type NumberedText } from '../pdf/write-objects.ts'
import { elementIdAt, objectNumberAt, type PartPlace, parentKeyAt } from './part-place.ts'
import { startWhole, type Whole } from './whole.ts'

/**
 * A document whose content is in order, written as one of several that are to be joined: with the
 * numbers, keys and ids that it has in the whole, so that joining only lays bytes one after another.
 */
export type WrittenPart = {
  readonly objects: WrittenObjects
  // Numbers of objects.
  readonly pages: readonly number[]
  /** Structure elements of the first level. */
  readonly elements: readonly number[]
  /** Leaves of the parent tree and of the tree of ids. */
  readonly parents: number | undefined
  readonly ids: number | undefined
  /** Bookmarks of the first level, whose neighbours stand in other parts; all but the end. */
  readonly bookmarks: readonly NumberedText[]
  /** Entries of the dictionary of places that links lead to. */
  readonly targets: string
}

/** Elements of the first level: those in the one Document into which the browser puts all of a part. */
function firstElements(
  document: PdfDocument,
  tops: readonly PdfReference[],
): readonly PdfReference[] {
  return tops.flatMap((top) => {
    const inside = entry(asDictionary(resolve(document, top)), 'K')
    const list = asArray(inside)
    const kids = list ? itemsOf(list) : inside === undefined ? [] : [inside]
    return kids.flatMap((kid) => asReference(kid) ?? [])
  })
}

function topElements(root: PdfDictionary | undefined): readonly PdfReference[] {
  const only = asReference(entry(root, 'K'))
  return only ? [only] : itemsOf(arrayAt(root, 'K')).flatMap((t) => asReference(t) ?? [])
}

/** Takes a tree out of a document. @returns what stood in it. */
function takeTree(
  document: PdfDocument,
  root: PdfDictionary | undefined,
  tree: 'ParentTree' | 'IDTree',
): readonly Pair[] {
  const pairs = treePairs(document, dictionaryAt(root, tree), tree === 'IDTree' ? 'Names' : 'Nums')
  for (const reference of treeReferences(document, entry(root, tree)))
    removeObject(document, reference)
  return pairs
}

/** A leaf of a tree with its limits (ISO 32000-1, 7.9.6 and 7.9.7). */
function addLeaf(
  document: PdfDocument,
  name: 'Nums' | 'Names',
  pairs: readonly Pair[],
): PdfReference | undefined {
  const [first, last] = [pairs[0]?.[0], pairs.at(-1)?.[0]]
  if (first === undefined || last === undefined) return undefined
  return addObject(document, dictionary(document, { Limits: [first, last], [name]: pairs.flat() }))
}

const nodeId = /^node\d+$/

/** What ids of structure elements become: they count on from whatever the browser printed before. */
function idsOf(document: PdfDocument, place: PartPlace): ReadonlyMap<string, string> {
  const ids = objectsOf(document).flatMap(([, object]) => {
    const id = asText(entry(asDictionary(object), 'ID'))
    return id !== undefined && nodeId.test(id) ? [id] : []
  })
  return new Map(ids.map((id, i) => [id, elementIdAt(place, i)]))
}

const byId =
  (ids: ReadonlyMap<string, string>) =>
  ([a]: Pair, [b]: Pair): number => {
    const [one, other] = [a, b].map((id) => ids.get(asText(id) ?? '') ?? '')
    return (one ?? '') < (other ?? '') ? -1 : 1
  }

/** What the whole has of its own, or has no use for. */
const notWritten: ReadonlySet<string | undefined> = new Set(['Catalog', 'Pages', 'StructTreeRoot'])

/** What stands in the whole in place of objects of a part. */
function movesInto(
  document: PdfDocument,
  tops: readonly PdfReference[],
  whole: Whole,
): Map<number, number> {
  const outline = asReference(entry(catalogOf(document), 'Outlines'))
  const trees = objectsOf(document).filter(
    ([, object]) => nameAt(asDictionary(object), 'Type') === 'Pages',
  )
  return new Map([
    ...trees.map(([tree]) => [objectNumber(tree), objectNumber(whole.pages)] as const),
    ...tops.map((top) => [objectNumber(top), objectNumber(whole.top)] as const),
    ...(outline ? [[objectNumber(outline), objectNumber(whole.outline)] as const] : []),
  ])
}

/** Objects that are written, those of which the whole has its own left out. */
function objectsToWrite(
  document: PdfDocument,
  replaced: ReadonlyMap<number, number>,
): readonly (readonly [PdfReference, PdfObject])[] {
  const left = new Set<PdfObject | undefined>([
    // The moment of printing stands there, which is not that of the whole.
    informationReference(document),
    entry(catalogOf(document), 'Dests'),
  ])
  return objectsOf(document).filter(
    ([reference, object]) =>
      !left.has(reference) &&
      !replaced.has(objectNumber(reference)) &&
      !notWritten.has(nameAt(asDictionary(object), 'Type')),
  )
}

/** A part with what its references, keys and ids become in the whole. */
type Moving = {
  readonly document: PdfDocument
  readonly place: PartPlace
  readonly move: Move
  readonly objects: ReturnType<typeof objectsToWrite>
  readonly numberOf: (reference: PdfReference) => number
}

function startMoving(
  document: PdfDocument,
  place: PartPlace,
  ids: ReadonlyMap<string, string>,
  moved: Map<number, number>,
): Moving {
  const objects = objectsToWrite(document, moved)
  objects.forEach(([reference], i) => {
    moved.set(objectNumber(reference), objectNumberAt(place, i))
  })
  const move: Move = {
    reference: (n) => moved.get(n),
    parentKey: (key) => parentKeyAt(place, key),
    text: (said) => ids.get(said) ?? said,
  }
  const numberOf = (reference: PdfReference): number => {
    const number = moved.get(objectNumber(reference))
    if (number === undefined) throw new Error(`object ${objectNumber(reference)} is not there`)
    return number
  }
  return { document, place, move, objects, numberOf }
}

/** Bookmarks of the first level, without what leads to their neighbours, and all other objects. */
function writeAll({
  document,
  place,
  move,
  objects,
  numberOf,
}: Moving): Pick<WrittenPart, 'objects' | 'bookmarks'> {
  const marks = new Set(topBookmarks(document))
  const bookmarks = [...marks].map((reference): NumberedText => {
    const bookmark = bookmarkAt(document, reference)
    for (const key of ['Parent', 'Prev', 'Next']) removeEntry(bookmark, key)
    return [numberOf(reference), insideText(bookmark, move)]
  })
  const piece = emptyPiece()
  appendObjects(piece, {
    objects: objects.flatMap(([reference, object]) =>
      marks.has(reference) ? [] : [[numberOf(reference), object] as const],
    ),
    texts: [],
    streamNumber: (i) => objectNumberAt(place, objects.length + i),
    move,
  })
  return { objects: writtenObjects(piece), bookmarks }
}

/** Writes a document, whose content and links are in order, for its place in a whole. */
export function writePart(document: PdfDocument, place: PartPlace): WrittenPart {
  const catalog = catalogOf(document)
  const root = dictionaryAt(catalog, 'StructTreeRoot')
  const tops = topElements(root)
  const elements = firstElements(document, tops)
  const ids = idsOf(document, place)
  const parents = takeTree(document, root, 'ParentTree').map(
    ([key, value]): Pair => [number(parentKeyAt(place, asNumber(key) ?? 0)), value],
  )
  const named = [...takeTree(document, root, 'IDTree')].sort(byId(ids))
  const leaves = [addLeaf(document, 'Nums', parents), addLeaf(document, 'Names', named)]
  const moving = startMoving(document, place, ids, movesInto(document, tops, startWhole()))
  const { move, numberOf } = moving
  const [parentLeaf, idLeaf] = leaves.map((leaf) => leaf && numberOf(leaf))
  const targets = dictionaryAt(catalog, 'Dests')
  return {
    ...writeAll(moving),
    pages: pagesOf(document).map(({ reference }) => numberOf(reference)),
    elements: elements.map(numberOf),
    parents: parentLeaf,
    ids: idLeaf,
    targets: targets ? insideText(targets, move) : '',
  }
}
