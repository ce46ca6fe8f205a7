import { renderBlankPages } from '../../render/binder/blank-pages.ts'
import type { Binder } from '../../render/binder/render-binder.ts'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { dropLinks } from '../merge/join-links.ts'
import { addDocument, finishMerge, type Merge, startMerge } from '../merge/merge-documents.ts'
import { openDocument } from '../pdf/documents.ts'
import type { PdfReference } from '../pdf/kinds.ts'
import type { Copy, Press } from '../press/press.ts'
import { printRaw } from '../press/print-pages.ts'
import { itemAt } from './item-at.ts'
import type { BinderPrint, PlacedPage } from './print-binder.ts'
import { printPages } from './print-part.ts'
import type { Leaf } from './replacement.ts'

/** How a leaf is called in a list: by the numbers on its pages. */
export const leafName = (leaf: Leaf): string => leaf.labels.filter((l) => l !== '').join(' / ')

const placeOf = (part: number, page: number | undefined): string => `${part}/${page}`

/** Prints the wanted pages part by part. @returns them by their places. */
async function addPrinted(
  merge: Merge,
  press: Press,
  { binder, printed }: ReplacementJob,
  wanted: readonly PlacedPage[],
): Promise<ReadonlyMap<string, PdfReference>> {
  const added = new Map<string, PdfReference>()
  for (const [i, part] of binder.parts.entries()) {
    const pages = wanted.flatMap((w) => (w.part === i && w.page !== undefined ? [w.page] : []))
    if (pages.length === 0) continue
    const own = await printPages(press, part, itemAt(printed.parts, i), pages)
    addDocument(merge, own).forEach((page, j) => {
      added.set(placeOf(i, pages[j]), page)
    })
  }
  return added
}

const addCopy = async (merge: Merge, press: Press, copy: Copy): Promise<readonly PdfReference[]> =>
  addDocument(merge, await openDocument(await printRaw(press, copy)))

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
  const merge = await startMerge()
  const wanted = putIn.flatMap((leaf) => leaf.pages.map((p) => itemAt(printed.laid, p)))
  const own = await addPrinted(merge, press, job, wanted)
  const blanks = wanted.filter((w) => w.page === undefined)
  const empty = [...(await addCopy(merge, press, blankPages(binder, blanks)))]
  const head = await addCopy(merge, press, list)
  const back = empty.splice(-1)
  const leaves = wanted.flatMap((w) => own.get(placeOf(w.part, w.page)) ?? empty.splice(0, 1))
  const isBackWanted = binder.sides === 2 && head.length % 2 === 1
  const document = finishMerge(merge, [...head, ...(isBackWanted ? back : []), ...leaves])
  dropLinks(document)
  return finishPdf(document, about)
}
