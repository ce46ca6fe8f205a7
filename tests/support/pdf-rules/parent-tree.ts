import type { Structure } from '../../../src/print/finish/structure/structure.ts'
import { dictionaryAt } from '../../../src/print/pdf/dictionaries.ts'
import type { PdfDocument, PdfObject } from '../../../src/print/pdf/kinds.ts'
import { asNumber } from '../../../src/print/pdf/objects.ts'
import { treePairs } from '../../../src/print/pdf/trees.ts'

/** Entries of the parent tree by their keys (ISO 32000-1, 14.7.4.4). */
export const parentTree = (
  document: PdfDocument,
  { root }: Structure,
): ReadonlyMap<number | undefined, PdfObject> =>
  new Map(
    treePairs(document, dictionaryAt(root, 'ParentTree'), 'Nums').map(([key, value]) => [
      asNumber(key) ?? -1,
      value,
    ]),
  )
