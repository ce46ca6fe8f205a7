import {
  PDFArray,
  type PDFContext,
  PDFDict,
  PDFHexString,
  type PDFName,
  PDFNumber,
  type PDFObject,
  PDFPageLeaf,
  PDFRawStream,
  PDFRef,
  PDFString,
} from '@cantoo/pdf-lib'

/** What is added to the numbers of a document so that they stay its own among those of others. */
export type Offsets = {
  readonly object: number /** Keys of the parent tree. */
  readonly parent: number /** Numbers in the ids of structure elements. */
  readonly node: number
}

const parentKeys: ReadonlySet<string> = new Set(['StructParent', 'StructParents'])

const nodeId = /^node(\d+)$/

/** Number in an id that the browser gave to a structure element, such as `node00000019`. */
export function nodeNumber(object: PDFObject): number | undefined {
  if (!(object instanceof PDFString || object instanceof PDFHexString)) return undefined
  const found = nodeId.exec(object.decodeText())
  return found ? Number(found[1]) : undefined
}

/**
 * The library finds a reference by a text made of its numbers, which for the tens of thousands of a
 * binder takes longer than all else here.
 */
const references: PDFRef[] = []

/** The reference to an object of the first generation. */
export const referenceTo = (objectNumber: number): PDFRef =>
  (references[objectNumber] ??= PDFRef.of(objectNumber))

/**
 * A copy of an object for another document: its references, keys and ids moved, everything else as
 * it is.
 */
export function movedCopy(object: PDFObject, to: PDFContext, by: Offsets): PDFObject {
  const entries = (dict: PDFDict): Map<PDFName, PDFObject> =>
    new Map(
      dict
        .entries()
        .map(([key, value]): [PDFName, PDFObject] => [
          key,
          value instanceof PDFNumber && parentKeys.has(key.decodeText())
            ? PDFNumber.of(value.asNumber() + by.parent)
            : movedCopy(value, to, by),
        ]),
    )
  // What a browser prints has never been changed, so that all its objects are of the first
  // generation.
  if (object instanceof PDFRef) return referenceTo(object.objectNumber + by.object)
  if (object instanceof PDFPageLeaf)
    return PDFPageLeaf.fromMapWithContext(entries(object), to, false)
  if (object instanceof PDFDict) return PDFDict.fromMapWithContext(entries(object), to)
  if (object instanceof PDFRawStream)
    return PDFRawStream.of(PDFDict.fromMapWithContext(entries(object.dict), to), object.contents)
  if (object instanceof PDFArray) {
    const copy = PDFArray.withContext(to)
    for (const item of object.asArray()) copy.push(movedCopy(item, to, by))
    return copy
  }
  const node = nodeNumber(object)
  // As long as all others, so that their order as text, which a tree of names asks for, is that of
  // the numbers.
  return node === undefined
    ? object
    : PDFString.of(`node${String(node + by.node).padStart(10, '0')}`)
}
