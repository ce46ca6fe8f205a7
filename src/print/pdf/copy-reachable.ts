import { copyObject } from './copy-object.ts'
import { reserveNumber, resolve, setObject } from './documents.ts'
import type { PdfDocument, PdfObject, PdfReference } from './kinds.ts'
import { asReference } from './objects.ts'

/** Copies an object with all that it leads to; what two objects lead to is copied once. */
export type Copier = (object: PdfObject) => PdfObject

export function copyReachable(source: PdfDocument, to: PdfDocument): Copier {
  const made = new Map<PdfReference, PdfReference>()
  const copy: Copier = (object) =>
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
    if (object) setObject(to, own, copy(object))
    return own
  }
  return copy
}
