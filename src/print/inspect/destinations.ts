import { PDFArray, PDFDict, type PDFDocument, PDFName, PDFNumber } from '@cantoo/pdf-lib'

/** Where a named place of a document lies: page counted from 0, height in points. */
export type Destination = { readonly page: number; readonly y: number }

/**
 * All named destinations of a document printed by a browser; every id that some link leads to is
 * one.
 */
export function destinations(document: PDFDocument): ReadonlyMap<string, Destination> {
  const pages = new Map(document.getPages().map((p, i) => [p.ref.toString(), i]))
  const dests = document.catalog.lookupMaybe(PDFName.of('Dests'), PDFDict)
  const found = new Map<string, Destination>()
  for (const [name, value] of dests?.entries() ?? []) {
    const at = document.context.lookup(value)
    if (!(at instanceof PDFArray)) continue
    const page = pages.get(String(at.get(0)))
    const y = at.get(3)
    if (page !== undefined)
      found.set(name.decodeText(), { page, y: y instanceof PDFNumber ? y.asNumber() : 0 })
  }
  return found
}
