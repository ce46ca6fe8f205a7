import {
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFString,
} from '@cantoo/pdf-lib'
import { treePairs, treeRefs } from '../../merge/trees.ts'

/** Tags of the browser that PDF 1.7 does not know, and what they stand for. */
const roles = { Em: 'Span', Strong: 'Span', Aside: 'Sect' }

type Replace = (text: string) => PDFObject

const nodeId = (x: unknown): string | undefined => {
  if (!(x instanceof PDFString || x instanceof PDFHexString)) return undefined
  const text = x.decodeText()
  return /^node\d+$/.test(text) ? text : undefined
}

function walk(object: unknown, replace: Replace): void {
  if (object instanceof PDFDict) {
    for (const [key, value] of object.entries()) {
      const id = nodeId(value)
      if (id === undefined) walk(value, replace)
      else object.set(key, replace(id))
    }
  } else if (object instanceof PDFArray) {
    for (let i = 0; i < object.size(); i++) {
      const id = nodeId(object.get(i))
      if (id === undefined) walk(object.get(i), replace)
      else object.set(i, replace(id))
    }
  }
}

/** Elements with ids, attributes of tables, and the tree of ids. */
const keysOfIds = ['ID', 'A', 'Headers', 'Names', 'Kids'].map((key) => PDFName.of(key))

const mayHoldIds = (object: PDFObject): boolean =>
  object instanceof PDFArray ||
  (object instanceof PDFDict && keysOfIds.some((key) => object.has(key)))

/**
 * The tree of ids as one flat leaf in the order of its names, as a tree of names must be (ISO
 * 32000-1, 7.9.6).
 */
function sortIds(document: PDFDocument, tree: PDFDict): void {
  const key = PDFName.of('IDTree')
  const pairs = treePairs(tree.lookupMaybe(key, PDFDict), 'Names').map(([id, element]) => ({
    id,
    element,
    text: id instanceof PDFString || id instanceof PDFHexString ? id.decodeText() : '',
  }))
  if (pairs.length === 0) return
  pairs.sort((a, b) => (a.text < b.text ? -1 : 1))
  for (const ref of treeRefs(tree.get(key), document.context)) document.context.delete(ref)
  tree.set(
    key,
    document.context.register(
      document.context.obj({ Names: pairs.flatMap(({ id, element }) => [id, element]) }),
    ),
  )
}

/**
 * Ids of structure elements count on from whatever the browser printed before, and not always in
 * the order of the elements; numbered anew in that order the same document always gets the same
 * ones.
 */
export function renumberStructure(document: PDFDocument): void {
  const tree = document.catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict)
  tree?.set(PDFName.of('RoleMap'), document.context.obj(roles))
  const objects = document.context
    .enumerateIndirectObjects()
    .map(([, object]) => object)
    .filter(mayHoldIds)
  const ids = objects.flatMap((object) =>
    object instanceof PDFDict ? (nodeId(object.get(PDFName.of('ID'))) ?? []) : [],
  )
  const names = new Map(ids.map((id, i) => [id, `n${String(i).padStart(6, '0')}`]))
  for (const object of objects) walk(object, (id) => PDFString.of(names.get(id) ?? id))
  if (tree) sortIds(document, tree)
}
