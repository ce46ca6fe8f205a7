import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from './kinds.ts'
import { readFile } from './read-file.ts'
import { followed, inside, isA, nameOf, type Objects, outside, refer } from './values.ts'

/** Opens a document as it is: nothing of it is brought up to date. @throws Error where it is none. */
export const openDocument = (bytes: Uint8Array): PdfDocument => outside(readFile(bytes))

/** A document without pages: the page tree is its first object, the catalog its second. */
export function emptyDocument(): PdfDocument {
  const [pages, root] = [refer(1), refer(2)]
  const tree = [nameOf('Type'), nameOf('Pages'), nameOf('Kids'), [], nameOf('Count'), 0]
  const catalog = [nameOf('Type'), nameOf('Catalog'), nameOf('Pages'), pages]
  const objects: Objects = [undefined]
  objects.push({ kind: 'dictionary', home: objects, entries: tree })
  objects.push({ kind: 'dictionary', home: objects, entries: catalog })
  return outside({ objects, root, info: undefined, id: undefined })
}

/** @throws Error where the document has none. */
export function catalogOf(document: PdfDocument): PdfDictionary {
  const { objects, root } = inside(document)
  const catalog = objects[root.number]
  if (!isA(catalog, 'dictionary')) throw new Error('a document has no catalog')
  return outside(catalog)
}

/** The object itself, or the one that it refers to. */
export const resolve = (
  document: PdfDocument,
  object: PdfObject | undefined,
): PdfObject | undefined => outside(followed(inside(document).objects, inside(object)))

/** A number for an object that comes later. */
export function reserveNumber(document: PdfDocument): PdfReference {
  const { objects } = inside(document)
  objects.push(undefined)
  return outside(refer(objects.length - 1))
}

/** Puts an object in the place of the one that a reference led to. */
export const setObject = (
  document: PdfDocument,
  reference: PdfReference,
  object: PdfObject,
): void => {
  inside(document).objects[inside(reference).number] = inside(object)
}

/** Gives an object a number of its own. */
export function addObject(document: PdfDocument, object: PdfObject): PdfReference {
  const reference = reserveNumber(document)
  setObject(document, reference, object)
  return reference
}

export const removeObject = (document: PdfDocument, reference: PdfReference): void => {
  inside(document).objects[inside(reference).number] = undefined
}

/** All objects that stand by themselves, in the order of their numbers. */
export function objectsOf(
  document: PdfDocument,
): readonly (readonly [reference: PdfReference, object: PdfObject])[] {
  const found: (readonly [PdfReference, PdfObject])[] = []
  for (const [number, object] of inside(document).objects.entries())
    if (object !== undefined) found.push([outside(refer(number)), outside(object)])
  return found
}
