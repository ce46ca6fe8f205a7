import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'
import { movedCopy, nodeNumber, type Offsets, referenceTo } from './copy-objects.ts'
import { highestKey, treePairs, treeRefs } from './trees.ts'

const name = (text: string): PDFName => PDFName.of(text)

/** Objects of a source that the merged document has of its own, or has no use for. */
const notCopied: ReadonlySet<string> = new Set(['Catalog', 'Pages', 'StructTreeRoot'])

const typeOf = (object: PDFObject): string => {
  const type = object instanceof PDFDict ? object.get(name('Type')) : undefined
  return type instanceof PDFName ? type.decodeText() : ''
}

/**
 * Several documents printed by a browser, brought together with their structure trees, link targets
 * and bookmarks, which copying pages alone would lose.
 */
export type Merger = {
  /** Takes over everything of a document. @returns its pages, which stand nowhere yet. */
  readonly add: (source: PDFDocument) => readonly PDFRef[]
  /** A page that shows the same as another and holds nothing that a reader could miss. */
  readonly repeat: (page: PDFRef) => PDFRef
  /** The document with these pages in this order. Nothing can be added afterwards. */
  readonly finish: (pages: readonly PDFRef[]) => PDFDocument
}

/** Starts an empty document to bring others into. */
export async function createMerger(): Promise<Merger> {
  const merged = await PDFDocument.create({ updateMetadata: false })
  const { context } = merged
  const elements: PDFRef[] = []
  const documentElement = context.nextRef()
  const parents: PDFObject[] = []
  const ids: PDFObject[] = []
  const targets = PDFDict.withContext(context)
  const bookmarks: PDFRef[] = []
  const outline = context.nextRef()
  let nextParent = 0
  let nextNode = 0

  function addStructure(source: PDFDocument, by: Offsets): void {
    const root = source.catalog.lookupMaybe(name('StructTreeRoot'), PDFDict)
    if (!root) return
    const top = root.get(name('K'))
    const tops = top instanceof PDFRef ? [top] : root.lookup(name('K'), PDFArray).asArray()
    for (const ref of tops) {
      const element = context.lookup(movedCopy(ref, context, by), PDFDict)
      // The browser puts all of a page into one Document; theirs become one.
      const inside = element.get(name('K'))
      const kids =
        inside instanceof PDFArray ? inside.asArray() : inside === undefined ? [] : [inside]
      for (const kid of kids) {
        context.lookup(kid, PDFDict).set(name('P'), documentElement)
        elements.push(kid as PDFRef)
      }
      context.delete(movedCopy(ref, context, by) as PDFRef)
    }
    const tree = treePairs(root.lookupMaybe(name('ParentTree'), PDFDict), 'Nums')
    for (const [key, value] of tree)
      if (key instanceof PDFNumber)
        parents.push(PDFNumber.of(key.asNumber() + by.parent), movedCopy(value, context, by))
    nextParent = Math.max(nextParent, by.parent + highestKey(tree) + 1)
    for (const [id, element] of treePairs(root.lookupMaybe(name('IDTree'), PDFDict), 'Names')) {
      ids.push(movedCopy(id, context, by), movedCopy(element, context, by))
      nextNode = Math.max(nextNode, by.node + (nodeNumber(id) ?? 0) + 1)
    }
  }

  function addBookmarks(source: PDFDocument, by: Offsets): void {
    let next = source.catalog.lookupMaybe(name('Outlines'), PDFDict)?.get(name('First'))
    while (next instanceof PDFRef) {
      const moved = movedCopy(next, context, by) as PDFRef
      context.lookup(moved, PDFDict).set(name('Parent'), outline)
      bookmarks.push(moved)
      next = source.context.lookup(next, PDFDict).get(name('Next'))
    }
  }

  function chainBookmarks(): void {
    const link = (item: PDFDict, to: 'Prev' | 'Next', ref: PDFRef | undefined): void => {
      if (ref === undefined) item.delete(name(to))
      else item.set(name(to), ref)
    }
    bookmarks.forEach((ref, i) => {
      const item = context.lookup(ref, PDFDict)
      link(item, 'Prev', bookmarks[i - 1])
      link(item, 'Next', bookmarks[i + 1])
    })
    const [first, last] = [bookmarks[0], bookmarks.at(-1)]
    if (first === undefined || last === undefined) return
    context.assign(
      outline,
      context.obj({ Type: 'Outlines', First: first, Last: last, Count: bookmarks.length }),
    )
    merged.catalog.set(name('Outlines'), outline)
  }

  function hangStructure(): void {
    const root = context.nextRef()
    context.assign(
      documentElement,
      context.obj({ Type: 'StructElem', S: 'Document', P: root, K: elements }),
    )
    const byId = ids.flatMap((id, i) =>
      i % 2 === 0 && (id instanceof PDFString || id instanceof PDFHexString)
        ? [{ text: id.decodeText(), pair: [id, ids[i + 1] as PDFObject] }]
        : [],
    )
    byId.sort((a, b) => (a.text < b.text ? -1 : 1))
    const tree = context.obj({
      Type: 'StructTreeRoot',
      K: documentElement,
      ParentTree: context.register(context.obj({ Nums: parents })),
      ParentTreeNextKey: nextParent,
    })
    if (byId.length > 0)
      tree.set(
        name('IDTree'),
        context.register(context.obj({ Names: byId.flatMap((i) => i.pair) })),
      )
    context.assign(root, tree)
    merged.catalog.set(name('StructTreeRoot'), root)
    merged.catalog.set(name('MarkInfo'), context.obj({ Marked: true }))
  }

  return {
    add: (source) => {
      const by: Offsets = {
        object: context.largestObjectNumber,
        parent: nextParent,
        node: nextNode,
      }
      // The moment of printing stands in its information, which is not that of the whole.
      const structure = source.catalog.lookupMaybe(name('StructTreeRoot'), PDFDict)
      const trees = ['IDTree', 'ParentTree'].flatMap((tree) =>
        treeRefs(structure?.get(name(tree)), source.context),
      )
      const leftOut: ReadonlySet<unknown> = new Set([
        source.context.trailerInfo.Info,
        source.catalog.get(name('Outlines')),
        ...trees,
      ])
      for (const [ref, object] of source.context.enumerateIndirectObjects()) {
        if (notCopied.has(typeOf(object)) || leftOut.has(ref)) continue
        context.assign(referenceTo(ref.objectNumber + by.object), movedCopy(object, context, by))
      }
      // A page without content has its key too, though the tree may not name it.
      for (const page of source.getPages()) {
        const key = page.node.get(name('StructParents'))
        if (key instanceof PDFNumber)
          nextParent = Math.max(nextParent, by.parent + key.asNumber() + 1)
      }
      addStructure(source, by)
      addBookmarks(source, by)
      for (const [key, value] of source.catalog.lookupMaybe(name('Dests'), PDFDict)?.entries() ??
        [])
        targets.set(key, movedCopy(value, context, by))
      return source.getPages().map((page) => referenceTo(page.ref.objectNumber + by.object))
    },
    repeat: (page) => {
      const copy = context.lookup(page, PDFDict).clone(context)
      copy.delete(name('StructParents'))
      copy.delete(name('Annots'))
      return context.register(copy)
    },
    finish: (pages) => {
      const tree = merged.catalog.Pages()
      const treeRef = merged.catalog.get(name('Pages')) as PDFRef
      const kids = PDFArray.withContext(context)
      for (const page of pages) {
        kids.push(page)
        context.lookup(page, PDFDict).set(name('Parent'), treeRef)
      }
      tree.set(name('Kids'), kids)
      tree.set(name('Count'), PDFNumber.of(pages.length))
      hangStructure()
      chainBookmarks()
      merged.catalog.set(name('Dests'), targets)
      return merged
    },
  }
}
