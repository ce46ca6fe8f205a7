import { copyObject } from '../pdf/copy-object.ts'
import type { PdfDocument, PdfObject, PdfReference } from '../pdf/kinds.ts'
import { number, plainText, referenceTo } from '../pdf/make-objects.ts'
import { asNumber, asReference, asText, objectNumber } from '../pdf/objects.ts'

/** What is added to the numbers of a document so that they stay its own among those of others. */
export type Offsets = {
  readonly object: number
  /** Keys of the parent tree. */
  readonly parent: number
  /** Numbers in the ids of structure elements. */
  readonly node: number
}

const parentKeys: ReadonlySet<string | undefined> = new Set(['StructParent', 'StructParents'])

const nodeId = /^node(\d+)$/

/** Number in an id that the browser gave to a structure element, such as `node00000019`. */
export function nodeNumber(object: PdfObject): number | undefined {
  const found = nodeId.exec(asText(object) ?? '')
  return found ? Number(found[1]) : undefined
}

/**
 * What a browser prints has never been changed, so that all its objects are of the first
 * generation.
 */
export const movedReference = (reference: PdfReference, by: Offsets): PdfReference =>
  referenceTo(objectNumber(reference) + by.object)

function movedLeaf(leaf: PdfObject, key: string | undefined, by: Offsets): PdfObject {
  const reference = asReference(leaf)
  if (reference) return movedReference(reference, by)
  const value = asNumber(leaf)
  if (value !== undefined) return parentKeys.has(key) ? number(value + by.parent) : leaf
  const node = nodeNumber(leaf)
  // As long as all others, so that their order as text, which a tree of names asks for, is that of
  // the numbers.
  return node === undefined ? leaf : plainText(`node${String(node + by.node).padStart(10, '0')}`)
}

/**
 * A copy of an object for another document: its references, keys and ids moved, everything else as
 * it is.
 */
export const movedCopy = (object: PdfObject, to: PdfDocument, by: Offsets): PdfObject =>
  copyObject(object, to, (leaf, key) => movedLeaf(leaf, key, by))
