import { elsewhere } from '../../render/binder/link-parts.ts'
import { type Hand, margins, textArea } from '../../render/binder/page-rules.ts'
import type { BinderPart } from '../../render/binder/render-binder.ts'
import { finishPart, orderContent } from '../finish/finish-pdf.ts'
import { keepBookmarks } from '../finish/outline.ts'
import { giveWay } from '../in-turn.ts'
import { joinLinks } from '../join/join-links.ts'
import type { PartPlace } from '../join/part-place.ts'
import type { WrittenPart } from '../join/write-part.ts'
import { lay } from '../lay/lay.ts'
import { once } from '../once.ts'
import { toDraft, toPdf } from '../page/to-pdf.ts'
import { openDocument } from '../pdf/documents.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { pageCount } from '../pdf/pages.ts'
import type { Press } from '../press/press.ts'
import { pageFingerprints } from './fingerprints.ts'
import type { OwnPlaces } from './foresee-pages.ts'
import { placesOf } from './places.ts'
import { fillSlots, slotsIn } from './slots.ts'

type PartPages = {
  readonly pages: number
  /** What is on each page, to tell whether it has changed. */
  readonly prints: readonly string[]
  /** Pages, from 0 within the part, of the places that something leads to. */
  readonly places: ReadonlyMap<string, number>
}

/** A part as printed. */
export type PartPrint = PartPages & {
  readonly hand: Hand
  /** The numbers that were put into its slots. */
  readonly filled: Readonly<Record<string, string>>
  /** The part finished for its place in the binder; done once, when it is first asked for. */
  readonly written: () => Promise<WrittenPart>
}

/** How many pages a printed part has, what is on them and where, as the browser wrote it. */
const readPages = (document: PdfDocument): PartPages => ({
  pages: pageCount(document),
  prints: pageFingerprints(document),
  places: placesOf(document),
})

/** Points. The browser's link targets lie that much too high. */
const marginTop = margins.top * 72

/** Finishes a part for its place in the binder. */
function writeDocument(
  document: PdfDocument,
  methods: BinderPart['methods'],
  place: PartPlace,
): WrittenPart {
  orderContent(document)
  keepBookmarks(document, methods)
  joinLinks(document, elsewhere)
  return finishPart(document, place, marginTop)
}

/**
 * What is known of a printed part, and how it is finished.
 * @param isLikelyLast Whether it will hardly be printed again, so that it is finished while the
 * browser prints the next parts.
 */
async function readPrint(
  press: Press,
  bytes: Uint8Array,
  { methods }: BinderPart,
  place: PartPlace,
  isLikelyLast: boolean,
): Promise<PartPages & Pick<PartPrint, 'written'>> {
  let opened: PdfDocument | undefined
  const pages = await press.keep(['pages', bytes], async () => {
    // The browser is given its next part first, and works while this one is looked at.
    await giveWay()
    const document = openDocument(bytes)
    if (isLikelyLast) opened = document
    return readPages(document)
  })
  const written = once(() =>
    press.keep([JSON.stringify([methods, place]), bytes], async () => {
      const document = opened ?? openDocument(bytes)
      opened = undefined
      return writeDocument(document, methods, place)
    }),
  )
  if (opened) await written()
  return { ...pages, written }
}

/** The numbers that a part's slots ask for, out of all there are. */
export const askedFor = (
  part: BinderPart,
  labels: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> =>
  Object.fromEntries(slotsIn(part.body).map((id) => [id, labels[id] ?? '']))

/** The places whose numbers a part asks for and that are not found while it is laid out. */
export function askedOfOthers(part: BinderPart): readonly string[] {
  const own = new Set(ownPlaces(part))
  return slotsIn(part.body).filter((id) => !own.has(id))
}

/** CSS pixels. */
const inch = 96

/** The places that a part's slots ask for and that stand in it itself. */
function ownPlaces(part: BinderPart): readonly string[] {
  if (part.methods.length === 0) return []
  return slotsIn(part.body).filter((id) => part.body.includes(` id="${id}"`))
}

type LaidOut = { readonly bytes: Uint8Array; readonly foreseen: Readonly<Record<string, string>> }

type HowToPrint = {
  /** Places whose numbers are put in as they are laid out. */
  readonly own?: readonly string[]
  /** All pages where it is left out. */
  readonly ranges?: string
  /** Only where everything would stand. */
  readonly isDraft?: boolean
  readonly isNext?: boolean
}

function printLaidOut(
  press: Press,
  part: BinderPart,
  { hand, filled }: Pick<PartPrint, 'hand' | 'filled'>,
  { own = [], ranges, isDraft = false, isNext = false }: HowToPrint,
): Promise<LaidOut> {
  const { width, height } = textArea(part.pages.paper)
  const numbering = { number: part.pages.number, unnumbered: part.unnumbered }
  const places: OwnPlaces = { numbering, ids: own }
  return press.run(
    { css: part.css[hand], body: fillSlots(part.body, filled) },
    { area: { width: width * inch, height: height * inch }, places, ranges, isDraft },
    async (page, { area, places, ranges, isDraft }) => {
      const foreseen = await lay(page, 'part', { area, places })
      return { bytes: isDraft ? await toDraft(page) : await toPdf(page, ranges), foreseen }
    },
    isNext,
  )
}

/**
 * Pages, from 0 within the part, of the places that something leads to, before anything is printed:
 * the numbers that it lacks are left out.
 */
export async function draftPart(
  press: Press,
  part: BinderPart,
  hand: Hand,
  labels: Readonly<Record<string, string>>,
): Promise<ReadonlyMap<string, number>> {
  const as = { hand, filled: askedFor(part, labels) }
  const { bytes } = await printLaidOut(press, part, as, { isDraft: true })
  return placesOf(openDocument(bytes))
}

type PartJob = {
  readonly part: BinderPart
  /** The side of a leaf on which it begins. */
  readonly hand: Hand
  readonly place: PartPlace
  /** Page numbers for its slots. */
  readonly labels: Readonly<Record<string, string>>
  /** Whether the numbers of its own pages are worked out as they are laid out. */
  readonly foresees: boolean
  readonly isNext: boolean
}

/** Prints one part. */
export async function printPart(press: Press, job: PartJob): Promise<PartPrint> {
  const { part, hand, place, labels, foresees, isNext } = job
  const own = foresees ? ownPlaces(part) : []
  const others = Object.entries(askedFor(part, labels)).filter(([id]) => !own.includes(id))
  const given = Object.fromEntries(others)
  const as = { hand, filled: given }
  const { bytes, foreseen } = await printLaidOut(press, part, as, { own, isNext })
  const filled = { ...given, ...foreseen }
  const isLikelyLast = Object.values(filled).every((label) => label !== '')
  return { ...(await readPrint(press, bytes, part, place, isLikelyLast)), hand, filled }
}

/** Prints some pages (from 0) of a part that was printed before, by themselves. */
export async function printPages(
  press: Press,
  part: BinderPart,
  as: Pick<PartPrint, 'hand' | 'filled'>,
  pages: readonly number[],
): Promise<Uint8Array> {
  const ranges = pages.map((p) => p + 1).join(',')
  return (await printLaidOut(press, part, as, { ranges })).bytes
}
