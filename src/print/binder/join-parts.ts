import { renderBlankPages } from '../../render/binder/blank-pages.ts'
import { elsewhere } from '../../render/binder/link-parts.ts'
import type { Binder } from '../../render/binder/render-binder.ts'
import { orderContent } from '../finish/finish-pdf.ts'
import { keepBookmarks } from '../finish/outline.ts'
import { joinLinks } from '../merge/join-links.ts'
import { addDocument, finishMerge, startMerge } from '../merge/merge-documents.ts'
import { openDocument } from '../pdf/documents.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import type { Press } from '../press/press.ts'
import { printRaw } from '../press/print-pages.ts'
import { itemAt } from './item-at.ts'
import { type LabelRange, labelRanges, pageLabel } from './page-numbers.ts'
import { type PartPrint, partDocument } from './print-part.ts'
import { orderOf } from './settle-parts.ts'

/** Blank pages, one behind each part that has one. */
async function blankPages(
  press: Press,
  binder: Binder,
  prints: readonly PartPrint[],
): Promise<PdfDocument | undefined> {
  const { blanks } = orderOf(binder, prints)
  const wanted = binder.parts.flatMap((part, i) => {
    const numbering = { number: part.pages.number, unnumbered: part.unnumbered }
    const label = pageLabel(numbering, itemAt(prints, i).pages)
    return blanks[i] ? [{ part: part.pages, label, words: binder.blank }] : []
  })
  if (wanted.length === 0) return undefined
  const document = await openDocument(await printRaw(press, renderBlankPages(wanted)))
  orderContent(document)
  return document
}

/** All parts in one document, whose content is in order, and how its pages are numbered. */
export async function joinParts(
  press: Press,
  binder: Binder,
  prints: readonly PartPrint[],
): Promise<{ document: PdfDocument; ranges: readonly LabelRange[] }> {
  const { blanks, starts } = orderOf(binder, prints)
  const blank = await blankPages(press, binder, prints)
  const merge = await startMerge()
  const documents = await Promise.all(prints.map(partDocument))
  binder.parts.forEach(({ methods }, i) => {
    keepBookmarks(itemAt(documents, i), methods)
  })
  const pages = documents.map((d) => addDocument(merge, d))
  const fillers = blank ? [...addDocument(merge, blank)] : []
  const document = finishMerge(
    merge,
    pages.flatMap((own, i) => (blanks[i] ? [...own, ...fillers.splice(0, 1)] : own)),
  )
  joinLinks(document, elsewhere)
  const ranges = binder.parts.flatMap(({ pages, unnumbered }, i) =>
    labelRanges({ number: pages.number, unnumbered }, itemAt(starts, i)),
  )
  return { document, ranges }
}
