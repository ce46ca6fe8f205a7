import type { Binder } from '../../render/binder/render-binder.ts'
import type { PdfAbout } from '../finish/finish-pdf.ts'
import type { Press } from '../press/press.ts'
import { itemAt } from './item-at.ts'
import { joinParts } from './join-parts.ts'
import { pageLabel } from './page-numbers.ts'
import type { PartPrint } from './print-part.ts'
import type { LaidPage } from './replacement.ts'
import { type BinderMemory, orderOf, settleParts } from './settle-parts.ts'

/**
 * A page with where it was printed: its part and its page there, both from 0; a blank one was not
 * printed with its part.
 */
export type PlacedPage = LaidPage & { readonly part: number; readonly page: number | undefined }

export type BinderPrint = {
  readonly bytes: Uint8Array
  readonly memory: BinderMemory
  /** All pages in their order. */
  readonly laid: readonly PlacedPage[]
  readonly parts: readonly PartPrint[]
}

/** All pages of a binder in their order, the blank ones among them. */
function placePages(binder: Binder, prints: readonly PartPrint[]): readonly PlacedPage[] {
  const { blanks } = orderOf(binder, prints)
  return prints.flatMap((p, i) => {
    const part = itemAt(binder.parts, i)
    const numbering = { number: part.pages.number, unnumbered: part.unnumbered }
    const own = p.prints.map(
      (print, page): PlacedPage => ({ label: pageLabel(numbering, page), print, part: i, page }),
    )
    return blanks[i]
      ? [...own, { label: pageLabel(numbering, p.pages), print: 'blank', part: i, page: undefined }]
      : own
  })
}

const memoryOf = (binder: Binder, prints: readonly PartPrint[]): BinderMemory => ({
  labels: Object.assign({}, ...prints.map((p) => p.filled)) as Readonly<Record<string, string>>,
  pages: Object.fromEntries(binder.parts.map((p, i) => [p.id, itemAt(prints, i).pages])),
})

export type BinderJob = {
  readonly binder: Binder
  readonly about: PdfAbout
  readonly last: BinderMemory | undefined
}

/**
 * Prints a binder: its parts side by side, those that ask for page numbers of others behind these, and
 * once more where numbers have moved all the same; then all in one document, with blank pages where a
 * part has to begin on a right-hand page.
 */
export async function printBinder(
  press: Press,
  { binder, about, last }: BinderJob,
  tell: (what: string) => void,
): Promise<BinderPrint> {
  const prints = await settleParts(press, binder, last, tell)
  return {
    bytes: await joinParts(press, binder, prints, about),
    laid: placePages(binder, prints),
    parts: prints,
    memory: memoryOf(binder, prints),
  }
}
