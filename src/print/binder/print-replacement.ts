import { renderBlankPages } from '../../render/binder/blank-pages.ts'
import type { Binder } from '../../render/binder/render-binder.ts'
import { finishPart, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { dropLinks } from '../join/join-links.ts'
import { joinWritten } from '../join/join-written.ts'
import type { WrittenPart } from '../join/write-part.ts'
import { openDocument } from '../pdf/documents.ts'
import type { Copy, Press } from '../press/press.ts'
import { printRaw } from '../press/print-pages.ts'
import { itemAt } from './item-at.ts'
import type { BinderPrint, PlacedPage } from './print-binder.ts'
import { printPages } from './print-part.ts'
import type { Leaf } from './replacement.ts'

/** How a leaf is called in a list: by the numbers on its pages. */
export const leafName = (leaf: Leaf): string => leaf.labels.filter((l) => l !== '').join(' / ')

/** Pages of a part that are wanted, from 0 within it. */
type Wanted = { readonly part: number; readonly pages: readonly number[] }

const wantedOf = (binder: Binder, wanted: readonly PlacedPage[]): readonly Wanted[] =>
  binder.parts.flatMap((_, part) => {
    const pages = wanted.flatMap((w) => (w.part === part && w.page !== undefined ? [w.page] : []))
    return pages.length === 0 ? [] : [{ part, pages }]
  })

/** Blank pages that stand in the binder, and behind them one for the back of the list. */
const blankPages = (binder: Binder, blanks: readonly PlacedPage[]): Copy =>
  renderBlankPages(
    [...blanks, { part: 0, label: '' }].map(({ part, label }) => ({
      part: itemAt(binder.parts, part).pages,
      label,
      words: binder.blank,
    })),
  )

export type ReplacementJob = {
  readonly binder: Binder
  readonly printed: BinderPrint
  /** Leaves that are new or changed. */
  readonly putIn: readonly Leaf[]
  /** The list of what to take out and what to put in. */
  readonly list: Copy
  readonly about: PdfAbout
}

/**
 * The list and, behind it, every leaf that is new or changed, printed as it stands in the binder;
 * the list begins on a leaf of its own.
 */
export async function printReplacement(press: Press, job: ReplacementJob): Promise<Uint8Array> {
  const { binder, printed, putIn, list, about } = job
  const wanted = putIn.flatMap((leaf) => leaf.pages.map((p) => itemAt(printed.laid, p)))
  const byPart = wantedOf(binder, wanted)
  const parts: WrittenPart[] = []
  const add = async (bytes: Uint8Array): Promise<number[]> => {
    const document = openDocument(bytes)
    // Most of them would lead to pages that are not there.
    dropLinks(document)
    orderContent(document)
    const written = finishPart(document, { part: parts.length, of: byPart.length + 2 })
    parts.push(written)
    return [...written.pages]
  }
  const own = new Map<number, number[]>()
  for (const { part, pages } of byPart) {
    const as = itemAt(printed.parts, part)
    own.set(part, await add(await printPages(press, itemAt(binder.parts, part), as, pages)))
  }
  const blanks = wanted.filter((w) => w.page === undefined)
  const empty = await add(await printRaw(press, blankPages(binder, blanks)))
  const head = await add(await printRaw(press, list))
  const back = empty.splice(-1)
  const leaves = wanted.flatMap(({ part, page }) =>
    (page === undefined ? empty : (own.get(part) ?? [])).splice(0, 1),
  )
  const isBackWanted = binder.sides === 2 && head.length % 2 === 1
  return joinWritten(parts, [...head, ...(isBackWanted ? back : []), ...leaves], about)
}
