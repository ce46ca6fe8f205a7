import { PDFDocument } from '@cantoo/pdf-lib'
import { renderBlankPages } from '../../render/binder/blank-pages.ts'
import { elsewhere } from '../../render/binder/link-parts.ts'
import type { Binder } from '../../render/binder/render-binder.ts'
import { finishOrdered, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { joinLinks } from '../merge/join-links.ts'
import { createMerger } from '../merge/merge-documents.ts'
import type { Press } from '../press/press.ts'
import { toPdf } from '../press/to-pdf.ts'
import { orderParts } from './order.ts'
import { type LabelRange, labelRanges, pageLabel } from './page-numbers.ts'
import { askedFor, type PartPrint, partDocument, printPart } from './print-part.ts'
import type { LaidPage } from './replacement.ts'

/** What is known of a binder from its last build, and saves prints where nothing has moved. */
export type BinderMemory = {
  /** What stood in each slot, by the place that it names. */
  readonly labels: Readonly<Record<string, string>>
  /** Page counts by part. */
  readonly pages: Readonly<Record<string, number>>
}

/**
 * A page with where it was printed: its part and its page there, both from 0; a blank one was not
 * printed with its part.
 */
type PlacedPage = LaidPage & { readonly part: number; readonly page: number | undefined }

export type BinderPrint = {
  readonly bytes: Uint8Array
  readonly memory: BinderMemory
  /** All pages in their order. */
  readonly laid: readonly PlacedPage[]
  readonly parts: readonly PartPrint[]
}

/** Numbers may move lines and so pages; more rounds than this would mean that they never settle. */
const mostRounds = 5

/** The number on the page of every place that something leads to. */
function labelsOf(binder: Binder, prints: readonly PartPrint[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    binder.parts.flatMap((part, i) =>
      [...(prints[i]?.places ?? [])].map(([id, page]): [string, string] => [
        id,
        pageLabel({ number: part.pages.number, unnumbered: part.unnumbered }, page),
      ]),
    ),
  )
}

const sameLabels = (
  a: Readonly<Record<string, string>>,
  b: Readonly<Record<string, string>>,
): boolean => Object.entries(a).every(([id, label]) => b[id] === label)

/** All pages of a binder in their order, the blank ones among them. */
function placePages(binder: Binder, prints: readonly PartPrint[]): readonly PlacedPage[] {
  const { blanks } = orderParts(
    prints.map((p) => p.pages),
    binder,
  )
  return prints.flatMap((p, i) => {
    const part = at(binder.parts, i)
    const numbering = { number: part.pages.number, unnumbered: part.unnumbered }
    const own = p.prints.map(
      (print, page): PlacedPage => ({ label: pageLabel(numbering, page), print, part: i, page }),
    )
    return blanks[i]
      ? [...own, { label: pageLabel(numbering, p.pages), print: 'blank', part: i, page: undefined }]
      : own
  })
}

/**
 * Prints all parts until each begins on the side on which it lies and shows the numbers that are
 * right.
 */
async function settleParts(
  press: Press,
  binder: Binder,
  last: BinderMemory | undefined,
  tell: (what: string) => void,
): Promise<readonly PartPrint[]> {
  const { parts } = binder
  const guessed = orderParts(
    parts.map((p) => last?.pages[p.id] ?? 2),
    binder,
  )
  // The longest first, so that both cores are busy to the end.
  const order = parts
    .map((_, i) => i)
    .sort((a, b) => (parts[b]?.body.length ?? 0) - (parts[a]?.body.length ?? 0))
  const started = new Map(
    order.map((i) => [i, printPart(press, at(parts, i), at(guessed.hands, i), last?.labels ?? {})]),
  )
  let prints = await Promise.all(parts.map((_, i) => started.get(i) as Promise<PartPrint>))
  for (let round = 1; round <= mostRounds; round++) {
    tell(`binder, round ${round}`)
    const { hands } = orderParts(
      prints.map((p) => p.pages),
      binder,
    )
    const labels = labelsOf(binder, prints)
    const settled = prints.map(
      (p, i) => p.hand === hands[i] && sameLabels(askedFor(at(parts, i), labels), p.filled),
    )
    if (settled.every((s) => s)) return prints
    prints = await Promise.all(
      prints.map((p, i) => (settled[i] ? p : printPart(press, at(parts, i), at(hands, i), labels))),
    )
  }
  throw new Error('page numbers do not settle')
}

function at<T>(list: readonly T[], i: number): T {
  const item = list[i]
  if (item === undefined) throw new RangeError(`there is no item ${i} of ${list.length}`)
  return item
}

async function joinParts(
  press: Press,
  binder: Binder,
  prints: readonly PartPrint[],
): Promise<{ document: PDFDocument; ranges: readonly LabelRange[] }> {
  const { blanks, starts } = orderParts(
    prints.map((p) => p.pages),
    binder,
  )
  const numbering = binder.parts.map((p) => ({ number: p.pages.number, unnumbered: p.unnumbered }))
  const blank = binder.parts.flatMap((part, i) =>
    blanks[i]
      ? [
          {
            part: part.pages,
            label: pageLabel(at(numbering, i), at(prints, i).pages),
            words: binder.blank,
          },
        ]
      : [],
  )
  const blankPages =
    blank.length === 0
      ? []
      : [
          await PDFDocument.load(
            await press.run(renderBlankPages(blank), {}, (page) => toPdf(page, { tagged: true })),
            { updateMetadata: false },
          ),
        ]
  blankPages.forEach(orderContent)
  const merger = await createMerger()
  const documents = await Promise.all(prints.map(partDocument))
  const pages = documents.map((d) => merger.add(d))
  const fillers = blankPages.flatMap((d) => [...merger.add(d)])
  const document = merger.finish(
    pages.flatMap((own, i) =>
      blanks[i] ? [...own, at(fillers, blanks.slice(0, i).filter((b) => b).length)] : own,
    ),
  )
  joinLinks(document, elsewhere)
  return { document, ranges: numbering.flatMap((n, i) => labelRanges(n, at(starts, i))) }
}

/**
 * Prints a binder: its parts side by side, each with the page numbers that the last build had, and
 * once more where these have moved; then all in one document, with blank pages where a part has to
 * begin on a right-hand page.
 * @param marginTop Top margin of the pages in points: the browser's link targets lie that much too
 * high.
 */
export async function printBinder(
  press: Press,
  binder: Binder,
  about: PdfAbout,
  marginTop: number,
  last: BinderMemory | undefined,
  tell: (what: string) => void,
): Promise<BinderPrint> {
  const prints = await settleParts(press, binder, last, tell)
  const bytes = await press.keep(
    [
      JSON.stringify([about, marginTop, binder.parts.map((p) => [p.pages, p.unnumbered])]),
      ...prints.map((p) => p.bytes),
    ],
    async () => {
      const { document, ranges } = await joinParts(press, binder, prints)
      return finishOrdered(document, { ...about, labels: ranges, marginTop })
    },
  )
  return {
    bytes,
    laid: placePages(binder, prints),
    parts: prints,
    memory: {
      labels: Object.assign({}, ...prints.map((p) => p.filled)) as Readonly<Record<string, string>>,
      pages: Object.fromEntries(binder.parts.map((p, i) => [p.id, at(prints, i).pages])),
    },
  }
}
