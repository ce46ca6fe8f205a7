import { copyObject } from './copy-object.ts'
import { reserveNumber, resolve, setObject } from './documents.ts'
import type { PdfDocument, PdfObject, PdfReference } from './kinds.ts'
import { asReference } from './objects.ts'

/** Copies objects with all that they lead to; what two objects lead to is copied once. */
export type Copier = {
  readonly copy: (object: PdfObject) => PdfObject
  /** What a reference leads to, copied; the reference to the copy. */
  readonly copied: (reference: PdfReference) => PdfReference
}

/**
 * @param made What stands for objects that have been copied, or are not to be; every copy is added.
 */
export function copyReachable(
  source: PdfDocument,
  to: PdfDocument,
  made: Map<PdfReference, PdfReference> = new Map(),
): Copier {
  const copy = (object: PdfObject): PdfObject =>
    copyObject(object, to, (leaf) => {
      const reference = asReference(leaf)
      return reference ? copied(reference) : leaf
    })
  function copied(reference: PdfReference): PdfReference {
    const known = made.get(reference)
    if (known) return known
    // The number is given before what stands under it is copied: objects may lead to each other.
    const own = reserveNumber(to)
    made.set(reference, own)
    const object = resolve(source, reference)
    if (object !== undefined) setObject(to, own, copy(object))
    return own
  }
  return { copy, copied }
}
