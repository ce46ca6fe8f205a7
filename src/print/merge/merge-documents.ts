import { dictionaryAt, entriesOf, entry, nameAt, setEntry } from '../pdf/dictionaries.ts'
import { catalogOf, emptyDocument, highestNumber, objectsOf, setObject } from '../pdf/documents.ts'
import { informationReference } from '../pdf/information.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from '../pdf/kinds.ts'
import { dictionary } from '../pdf/make-objects.ts'
import { asDictionary } from '../pdf/objects.ts'
import { pagesOf, setPages } from '../pdf/pages.ts'
import { treeReferences } from '../pdf/trees.ts'
import { movedCopy, movedReference, type Offsets } from './moved-copy.ts'
import { addBookmarks, hangBookmarks, type OutlineMerge, startOutline } from './outline.ts'
import { addStructure, hangStructure, type StructureMerge, startStructure } from './structure.ts'

/**
 * Several documents printed by a browser on their way into one, with their structure trees, link
 * targets and bookmarks, which copying pages alone would lose.
 */
export type Merge = {
  readonly document: PdfDocument
  readonly structure: StructureMerge
  readonly outline: OutlineMerge
  readonly targets: PdfDictionary
}

/** Starts with an empty document. */
export async function startMerge(): Promise<Merge> {
  const document = await emptyDocument()
  return {
    document,
    structure: startStructure(document),
    outline: startOutline(document),
    targets: dictionary(document, {}),
  }
}

/** Objects of a source that the merged document has of its own, or has no use for. */
const notCopied: ReadonlySet<string | undefined> = new Set(['Catalog', 'Pages', 'StructTreeRoot'])

/** What stands for the whole of a source: its trees, its bookmarks' root, and what it says of itself. */
function wholesOf(source: PdfDocument): ReadonlySet<PdfObject | undefined> {
  const catalog = catalogOf(source)
  const structure = dictionaryAt(catalog, 'StructTreeRoot')
  return new Set([
    // The moment of printing stands there, which is not that of the whole.
    informationReference(source),
    entry(catalog, 'Outlines'),
    ...['IDTree', 'ParentTree'].flatMap((tree) => treeReferences(source, entry(structure, tree))),
  ])
}

function copyObjects(source: PdfDocument, to: PdfDocument, by: Offsets): void {
  const wholes = wholesOf(source)
  for (const [reference, object] of objectsOf(source))
    if (!wholes.has(reference) && !notCopied.has(nameAt(asDictionary(object), 'Type')))
      setObject(to, movedReference(reference, by), movedCopy(object, to, by))
}

/** Takes over everything of a document. @returns its pages, which stand nowhere yet. */
export function addDocument(merge: Merge, source: PdfDocument): readonly PdfReference[] {
  const { document, structure, outline, targets } = merge
  const by: Offsets = {
    object: highestNumber(document),
    parent: structure.nextParent,
    node: structure.nextNode,
  }
  copyObjects(source, document, by)
  addStructure(structure, document, source, by)
  addBookmarks(outline, document, source, by)
  for (const [key, value] of entriesOf(dictionaryAt(catalogOf(source), 'Dests')))
    setEntry(targets, key, movedCopy(value, document, by))
  return pagesOf(source).map(({ reference }) => movedReference(reference, by))
}

/** The document with these pages in this order. Nothing can be added afterwards. */
export function finishMerge(merge: Merge, pages: readonly PdfReference[]): PdfDocument {
  const { document, structure, outline, targets } = merge
  setPages(document, pages)
  hangStructure(structure, document)
  hangBookmarks(outline, document)
  setEntry(catalogOf(document), 'Dests', targets)
  return document
}
