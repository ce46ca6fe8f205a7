import { PDFDocument } from '@cantoo/pdf-lib'
import { type Hand, textArea } from '../../render/binder/page-rules.ts'
import type { BinderPart } from '../../render/binder/render-binder.ts'
import { orderContent } from '../finish/finish-pdf.ts'
import { destinations } from '../inspect/destinations.ts'
import type { Press } from '../press/press.ts'
import { toPdf } from '../press/to-pdf.ts'
import { pageFingerprints } from './fingerprints.ts'
import { fillSlots, slotsIn } from './slots.ts'
import { tightenTails } from './tighten-tails.ts'

/** A part as printed. */
export type PartPrint = {
  readonly bytes: Uint8Array
  readonly pages: number
  readonly hand: Hand
  /** The numbers that were put into its slots. */
  readonly filled: Readonly<Record<string, string>>
  /** What is on each page, to tell whether it has changed. */
  readonly prints: readonly string[]
  /** Pages, from 0 within the part, of the places that something leads to. */
  readonly places: ReadonlyMap<string, number>
}

/** Documents that were read to find their places and are soon joined. */
const open = new WeakMap<Uint8Array, PDFDocument>()

/** The document that a part was printed as, its content in order; to be joined with others once. */
export async function partDocument({ bytes }: Pick<PartPrint, 'bytes'>): Promise<PDFDocument> {
  const known = open.get(bytes)
  if (known) return known
  const document = await PDFDocument.load(bytes, { updateMetadata: false })
  orderContent(document)
  open.set(bytes, document)
  return document
}

type Findings = Pick<PartPrint, 'pages' | 'prints' | 'places'>

/** What a printed part holds and where, as the browser wrote it. */
async function inspect(bytes: Uint8Array, isLikelyLast: boolean): Promise<Findings> {
  // The browser is given its next part first, and works while this one is looked at.
  await new Promise((go) => setImmediate(go))
  const document = await PDFDocument.load(bytes, { updateMetadata: false })
  const findings = {
    pages: document.getPageCount(),
    prints: pageFingerprints(document),
    places: new Map([...destinations(document)].map(([id, at]): [string, number] => [id, at.page])),
  }
  // While the browser prints the next parts there is time for what would come after the last of
  // them.
  if (isLikelyLast) {
    orderContent(document)
    open.set(bytes, document)
  }
  return findings
}

/** The numbers that a part's slots ask for, out of all there are. */
export const askedFor = (
  part: BinderPart,
  labels: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> =>
  Object.fromEntries(slotsIn(part.body).map((id) => [id, labels[id] ?? '']))

/** CSS pixels. */
const inch = 96

/** All pages of a part, or those of some ranges. */
function printLaidOut(
  press: Press,
  part: BinderPart,
  { hand, filled }: Pick<PartPrint, 'hand' | 'filled'>,
  ranges: string | undefined,
): Promise<Uint8Array> {
  const { width, height } = textArea(part.pages.paper)
  return press.run(
    { css: part.css[hand], body: fillSlots(part.body, filled) },
    { area: { width: width * inch, height: height * inch }, ranges },
    async (page, { area, ranges }) => {
      await tightenTails(page, area)
      return toPdf(page, { tagged: true, ...(ranges === undefined ? {} : { ranges }) })
    },
  )
}

/** Prints one part, beginning on this side of a leaf, with these page numbers in its slots. */
export async function printPart(
  press: Press,
  part: BinderPart,
  hand: Hand,
  labels: Readonly<Record<string, string>>,
): Promise<PartPrint> {
  const filled = askedFor(part, labels)
  const bytes = await printLaidOut(press, part, { hand, filled }, undefined)
  const isLikelyLast = Object.values(filled).every((label) => label !== '')
  const findings = await press.keep(['findings', bytes], () => inspect(bytes, isLikelyLast))
  return { bytes, ...findings, hand, filled }
}

/** Prints some pages (from 0) of a part that was printed before, by themselves. */
export async function printPages(
  press: Press,
  part: BinderPart,
  as: Pick<PartPrint, 'hand' | 'filled'>,
  pages: readonly number[],
): Promise<PDFDocument> {
  return PDFDocument.load(await printLaidOut(press, part, as, pages.map((p) => p + 1).join(',')), {
    updateMetadata: false,
  })
}
