import {
  dictionaryAt,
  entriesOf,
  entry,
  lookUp,
  nameAt,
} from '../../../src/print/pdf/dictionaries.ts'
import { catalogOf, resolve } from '../../../src/print/pdf/documents.ts'
import type { PdfDictionary, PdfDocument, PdfObject } from '../../../src/print/pdf/kinds.ts'
import { asArray, asDictionary, asName, asText, itemsOf } from '../../../src/print/pdf/objects.ts'
import { annotationsOf, pagesOf } from '../../../src/print/pdf/pages.ts'
import { treePairs } from '../../../src/print/pdf/trees.ts'

type Places = {
  readonly document: PdfDocument
  readonly pages: ReadonlySet<PdfObject | undefined>
  readonly named: ReadonlyMap<string, PdfObject>
}

function placesOf(document: PdfDocument): Places {
  const catalog = catalogOf(document)
  const tree = dictionaryAt(dictionaryAt(catalog, 'Names'), 'Dests')
  return {
    document,
    pages: new Set(pagesOf(document).map((p) => p.reference)),
    named: new Map([
      ...entriesOf(dictionaryAt(catalog, 'Dests')),
      ...treePairs(document, tree, 'Names').map(([key, v]) => [asText(key) ?? '', v] as const),
    ]),
  }
}

function isThere(places: Places, target: PdfObject | undefined): boolean {
  const at = resolve(places.document, target)
  const list = asArray(at)
  if (list) return places.pages.has(itemsOf(list)[0])
  const record = asDictionary(at)
  return record !== undefined && isThere(places, entry(record, 'D'))
}

/** The fault of what a link or a bookmark leads to, if it has one. */
function targetFault(places: Places, item: PdfDictionary): string | undefined {
  const action = dictionaryAt(item, 'A')
  if (action && nameAt(action, 'S') !== 'GoTo') return undefined
  const target = action ? lookUp(action, 'D') : lookUp(item, 'Dest')
  if (target === undefined) return 'leads nowhere'
  const id = asName(target) ?? asText(target)?.trim() ?? ''
  if (id === '') return isThere(places, target) ? undefined : 'leads to a page that is not there'
  const found = places.named.get(id)
  return found && isThere(places, found) ? undefined : `leads to "${id}", which is not there`
}

function bookmarkFaults(places: Places, first: PdfDictionary | undefined): string[] {
  const faults: string[] = []
  for (let item = first; item; item = dictionaryAt(item, 'Next')) {
    const fault = targetFault(places, item)
    const title = asText(lookUp(item, 'Title'))?.trim() ?? ''
    if (fault !== undefined) faults.push(`bookmark "${title}" ${fault}`)
    faults.push(...bookmarkFaults(places, dictionaryAt(item, 'First')))
  }
  return faults
}

/** Links and bookmarks lead somewhere. */
export function destinationFaults(document: PdfDocument): string[] {
  const places = placesOf(document)
  const links = pagesOf(document).flatMap((page, i) =>
    annotationsOf(document, page).flatMap(({ dictionary }) => {
      const isLink = nameAt(dictionary, 'Subtype') === 'Link'
      const fault = isLink ? targetFault(places, dictionary) : undefined
      return fault === undefined ? [] : [`page ${i + 1}: Link ${fault}`]
    }),
  )
  const outlines = dictionaryAt(catalogOf(document), 'Outlines')
  return [...links, ...bookmarkFaults(places, dictionaryAt(outlines, 'First'))]
}
