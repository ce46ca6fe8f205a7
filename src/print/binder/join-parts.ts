import { renderBlankPages } from '../../render/binder/blank-pages.ts'
import type { Binder } from '../../render/binder/render-binder.ts'
import { finishPart, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { joinWritten } from '../join/join-written.ts'
import type { WrittenPart } from '../join/write-part.ts'
import { openDocument } from '../pdf/documents.ts'
import type { Press } from '../press/press.ts'
import { printRaw } from '../press/print-pages.ts'
import { itemAt } from './item-at.ts'
import { labelRanges, pageLabel } from './page-numbers.ts'
import type { PartPrint } from './print-part.ts'
import { orderOf, placeOf } from './settle-parts.ts'

/** Blank pages, one behind each part that has one, which come behind all parts among these. */
async function blankPages(
  press: Press,
  binder: Binder,
  prints: readonly PartPrint[],
): Promise<WrittenPart | undefined> {
  const { blanks } = orderOf(binder, prints)
  const wanted = binder.parts.flatMap((part, i) => {
    const numbering = { number: part.pages.number, unnumbered: part.unnumbered }
    const label = pageLabel(numbering, itemAt(prints, i).pages)
    return blanks[i] ? [{ part: part.pages, label, words: binder.blank }] : []
  })
  if (wanted.length === 0) return undefined
  const document = openDocument(await printRaw(press, renderBlankPages(wanted)))
  orderContent(document)
  return finishPart(document, placeOf(binder, binder.parts.length))
}

/** All parts in one finished document. */
export async function joinParts(
  press: Press,
  binder: Binder,
  prints: readonly PartPrint[],
  about: PdfAbout,
): Promise<Uint8Array> {
  const { blanks, starts } = orderOf(binder, prints)
  const blank = await blankPages(press, binder, prints)
  const parts = await Promise.all(prints.map((print) => print.written()))
  const fillers = blank ? [...blank.pages] : []
  const pages = parts.flatMap((part, i) =>
    blanks[i] ? [...part.pages, ...fillers.splice(0, 1)] : part.pages,
  )
  const labels = binder.parts.flatMap(({ pages, unnumbered }, i) =>
    labelRanges({ number: pages.number, unnumbered }, itemAt(starts, i)),
  )
  return joinWritten(blank ? [...parts, blank] : parts, pages, about, labels)
}
