import { dictionaryAt, entry, nameAt, numberAt, referenceAt } from '../../pdf/dictionaries.ts'
import { catalogOf, resolve } from '../../pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject, PdfReference } from '../../pdf/kinds.ts'
import { asArray, asDictionary, asNumber, asReference, itemsOf } from '../../pdf/objects.ts'
import type { Element, Item, Structure } from './structure.ts'

type Reading = {
  readonly document: PdfDocument
  /** Elements in the order in which they are met. */
  readonly all: Element[]
  readonly seen: Set<PdfReference>
}

function readElement(
  reading: Reading,
  reference: PdfReference,
  dictionary: PdfDictionary,
): readonly Item[] {
  // An element stands in one place only.
  if (reading.seen.has(reference)) return []
  reading.seen.add(reference)
  const element: Element = {
    kind: 'element',
    reference,
    dictionary,
    type: nameAt(dictionary, 'S') ?? '',
    kids: readItems(reading, entry(dictionary, 'K'), referenceAt(dictionary, 'Pg')),
  }
  reading.all.push(element)
  return [element]
}

/** @param page The page of content that names none of its own. */
function readItems(
  reading: Reading,
  kid: PdfObject | undefined,
  page: PdfReference | undefined,
): Item[] {
  const item = resolve(reading.document, kid)
  const number = asNumber(item)
  if (number !== undefined) return page ? [{ kind: 'content', page, mcid: number }] : []
  const list = asArray(item)
  if (list) return itemsOf(list).flatMap((i) => readItems(reading, i, page))
  const dictionary = asDictionary(item)
  if (!dictionary) return []
  const at = referenceAt(dictionary, 'Pg') ?? page
  const [mcid, object] = [numberAt(dictionary, 'MCID'), referenceAt(dictionary, 'Obj')]
  if (mcid !== undefined) return at ? [{ kind: 'content', page: at, mcid }] : []
  if (object) return at ? [{ kind: 'object', page: at, object }] : []
  // Elements are indirect objects.
  const reference = asReference(kid)
  return reference ? [...readElement(reading, reference, dictionary)] : []
}

/** The structure of a document; nothing where the document has none. */
export function readStructure(document: PdfDocument): Structure | undefined {
  const rootReference = referenceAt(catalogOf(document), 'StructTreeRoot')
  const root = dictionaryAt(catalogOf(document), 'StructTreeRoot')
  if (!rootReference || !root) return undefined
  const reading: Reading = { document, all: [], seen: new Set() }
  const tops = readItems(reading, entry(root, 'K'), undefined).filter((i) => i.kind === 'element')
  return { root, rootReference, tops, all: reading.all }
}
