import { addObject } from '../../pdf/documents.ts'
import type { PdfDocument } from '../../pdf/kinds.ts'
import { dictionary } from '../../pdf/make-objects.ts'
import type { Element, Item } from './structure.ts'

/** A new element of a document; it stands nowhere yet. */
export function makeElement(document: PdfDocument, type: string, kids: Item[]): Element {
  const made = dictionary(document, { Type: 'StructElem', S: type })
  return { kind: 'element', reference: addObject(document, made), dictionary: made, type, kids }
}
