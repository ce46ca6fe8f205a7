import { dictionaryAt, entriesOf, entry, hasEntry, setEntry } from '../../pdf/dictionaries.ts'
import { addObject, catalogOf, objectsOf, removeObject } from '../../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject } from '../../pdf/kinds.ts'
import { dictionary, plainText } from '../../pdf/make-objects.ts'
import { asArray, asDictionary, asText, itemsOf, setItem } from '../../pdf/objects.ts'
import { treePairs, treeReferences } from '../../pdf/trees.ts'

/** Tags of the browser that PDF 1.7 does not know, and what they stand for. */
export const roles = { Em: 'Span', Strong: 'Span', Aside: 'Sect' }

type Replace = (id: string) => PdfObject

const nodeId = (object: PdfObject | undefined): string | undefined => {
  const text = asText(object)
  return text !== undefined && /^node\d+$/.test(text) ? text : undefined
}

function replaceIds(object: PdfObject, replace: Replace): void {
  const [holder, list] = [asDictionary(object), asArray(object)]
  const each = (value: PdfObject, set: (id: PdfObject) => void): void => {
    const id = nodeId(value)
    if (id === undefined) replaceIds(value, replace)
    else set(replace(id))
  }
  if (holder)
    for (const [key, value] of entriesOf(holder)) each(value, (id) => setEntry(holder, key, id))
  else if (list)
    itemsOf(list).forEach((item, i) => {
      each(item, (id) => setItem(list, i, id))
    })
}

/** Elements with ids, attributes of tables, and the tree of ids. */
const keysOfIds = ['ID', 'A', 'Headers', 'Names', 'Kids']

function mayHoldIds(object: PdfObject): boolean {
  const holder = asDictionary(object)
  return holder ? keysOfIds.some((key) => hasEntry(holder, key)) : asArray(object) !== undefined
}

/**
 * The tree of ids as one flat leaf in the order of its names, as a tree of names must be (ISO
 * 32000-1, 7.9.6).
 */
function sortIds(document: PdfDocument, tree: PdfDictionary): void {
  const pairs = treePairs(document, dictionaryAt(tree, 'IDTree'), 'Names').map(([id, element]) => ({
    id,
    element,
    text: asText(id) ?? '',
  }))
  if (pairs.length === 0) return
  pairs.sort((a, b) => (a.text < b.text ? -1 : 1))
  for (const reference of treeReferences(document, entry(tree, 'IDTree')))
    removeObject(document, reference)
  const leaf = dictionary(document, { Names: pairs.flatMap(({ id, element }) => [id, element]) })
  setEntry(tree, 'IDTree', addObject(document, leaf))
}

/**
 * Ids of structure elements count on from whatever the browser printed before, and not always in
 * the order of the elements; numbered anew in that order the same document always gets the same
 * ones.
 */
export function renumberStructure(document: PdfDocument): void {
  const tree = dictionaryAt(catalogOf(document), 'StructTreeRoot')
  if (tree) setEntry(tree, 'RoleMap', dictionary(document, roles))
  const objects = objectsOf(document)
    .map(([, object]) => object)
    .filter(mayHoldIds)
  const ids = objects.flatMap((object) => nodeId(entry(asDictionary(object), 'ID')) ?? [])
  const names = new Map(ids.map((id, i) => [id, `n${String(i).padStart(6, '0')}`]))
  for (const object of objects) replaceIds(object, (id) => plainText(names.get(id) ?? id))
  if (tree) sortIds(document, tree)
}
