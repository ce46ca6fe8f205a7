import { readingDistanceWords } from '../../compute/safety/reading-distance.ts'
import { type Ink, inks } from '../../model/ink.ts'
import { leastCapitals, type SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheets } from '../../render/sheets/render-sheets.ts'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { addDocument, finishMerge, startMerge } from '../merge/merge-documents.ts'
import { type BrowserPage, freshFonts } from '../page/open-page.ts'
import { toPdf } from '../page/to-pdf.ts'
import { openDocument } from '../pdf/documents.ts'
import { pageCount } from '../pdf/pages.ts'
import type { Press } from '../press/press.ts'
import { capitalsOf, fitSheet } from './fit-sheet.ts'

export type SheetFile = {
  readonly paper: SheetPaper
  readonly ink: Ink
  /** Of the procedure; undefined for all sheets in one file. */
  readonly id: string | undefined
  readonly pages: number
  /** Height of the capitals of its steps, mm; of all sheets the smallest. */
  readonly capitals: number
  readonly bytes: Uint8Array
}

/** A sheet as the browser has printed it. */
type InInks = Readonly<Record<Ink, Uint8Array>> & {
  readonly pages: number
  readonly capitals: number
}

async function printInInks(
  page: BrowserPage,
  { system, capitals }: { system: UnitSystem; capitals: number },
): Promise<InInks> {
  const { pages } = await fitSheet(page, capitals, (points) => readingDistanceWords(points, system))
  const inInk = async (ink: Ink): Promise<Uint8Array> => {
    await page.evaluate((dress) => {
      document.body.className = dress
    }, ink)
    // Of all the sizes that were tried only the last may be on paper.
    await freshFonts(page)
    return toPdf(page)
  }
  const color = await inInk('color')
  return {
    color,
    black: await inInk('black'),
    pages: pages.length,
    capitals: Math.min(...pages.map(capitalsOf)),
  }
}

/** @throws Error when a sheet has not come out on as many pages as it was laid out. */
const finishSheet = (
  press: Press,
  bytes: Uint8Array,
  wanted: number,
  about: PdfAbout,
): Promise<Uint8Array> =>
  press.keep([JSON.stringify(about), bytes], async () => {
    const printed = await openDocument(bytes)
    const pages = pageCount(printed)
    if (pages !== wanted) throw new Error(`${pages} pages instead of ${wanted}`)
    return finishPdf(printed, about)
  })

const allInOne = (
  press: Press,
  sheets: readonly Uint8Array[],
  about: PdfAbout,
): Promise<Uint8Array> =>
  press.keep([JSON.stringify(about), ...sheets], async () => {
    const merge = await startMerge()
    const pages = []
    for (const bytes of sheets) pages.push(...addDocument(merge, await openDocument(bytes)))
    return finishPdf(finishMerge(merge, pages), about)
  })

type Paper = Sheets['papers'][number]

type Sheet = Sheets['sheets'][number]

type Printed = { readonly paper: Paper; readonly raw: InInks; readonly files: readonly SheetFile[] }

export type SheetsJob = {
  readonly sheets: Sheets
  readonly about: PdfAbout
  readonly system: UnitSystem
}

async function printSheet(
  press: Press,
  { about, system }: SheetsJob,
  paper: Paper,
  { id, title, body }: Sheet,
): Promise<Printed> {
  try {
    const raw = await press.run(
      { css: paper.css, body },
      { system, capitals: leastCapitals(paper.name) },
      printInInks,
    )
    const inInk = async (ink: Ink): Promise<SheetFile> => {
      const own = { ...about, title, seed: `${about.seed}/${paper.name}/${id}/${ink}` }
      const { pages, capitals } = raw
      const bytes = await finishSheet(press, raw[ink], pages, own)
      return { paper: paper.name, ink, id, pages, capitals, bytes }
    }
    return { paper, raw, files: await Promise.all(inks.map(inInk)) }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Error(`sheet ${id} on ${paper.name}: ${reason}`, { cause: error })
  }
}

/** All sheets on a paper in one ink. */
async function printTogether(
  press: Press,
  { about }: SheetsJob,
  paper: Paper,
  printed: readonly Printed[],
  ink: Ink,
): Promise<SheetFile> {
  const raws = printed.filter((p) => p.paper === paper).map((p) => p.raw)
  const own = raws.map((raw) => raw[ink])
  const seed = `${about.seed}/${paper.name}/${ink}`
  const bytes = await allInOne(press, own, { ...about, seed })
  const pages = raws.reduce((sum, raw) => sum + raw.pages, 0)
  const capitals = Math.min(...raws.map((raw) => raw.capitals))
  return { paper: paper.name, ink, id: undefined, pages, capitals, bytes }
}

/**
 * Prints posted sheets, each in the largest type that fits, on every paper in color and in
 * black: each in a file of its own, and all in one.
 * @throws Error naming the sheet that does not fit or does not come out as it was laid out.
 */
export async function printSheets(
  press: Press,
  job: SheetsJob,
  tell: (what: string) => void,
): Promise<readonly SheetFile[]> {
  const { papers, sheets } = job.sheets
  let done = 0
  const printed = await Promise.all(
    papers.flatMap((paper) =>
      sheets.map(async (sheet) => {
        const one = await printSheet(press, job, paper, sheet)
        done++
        tell(`sheet ${done} of ${papers.length * sheets.length}`)
        return one
      }),
    ),
  )
  const together = papers.flatMap((paper) =>
    inks.map((ink) => printTogether(press, job, paper, printed, ink)),
  )
  return [...printed.flatMap((p) => p.files), ...(await Promise.all(together))]
}
