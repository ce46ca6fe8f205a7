import { PDFDocument } from '@cantoo/pdf-lib'
import type { Page } from 'puppeteer'
import { readingDistanceWords } from '../../compute/reading/reading-distance.ts'
import type { SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheets } from '../../render/sheets/render-sheets.ts'
import { finishPdf, type PdfAbout } from '../finish/finish-pdf.ts'
import { createMerger } from '../merge/merge-documents.ts'
import { freshFonts } from '../page/open-page.ts'
import type { Press } from '../press/press.ts'
import { toPdf } from '../press/to-pdf.ts'
import { fitSheet, stepPoints } from './fit-sheet.ts'

/** Black spares ink and a copier's guesses at colours. */
const inks = ['color', 'black'] as const

type Ink = (typeof inks)[number]

type OneSheet = { readonly points: number; readonly printed: Readonly<Record<Ink, Uint8Array>> }

export type SheetFile = {
  readonly paper: SheetPaper
  readonly ink: Ink /** Of the procedure; undefined for all sheets in one file. */
  readonly id: string | undefined
  readonly bytes: Uint8Array
}

export type SheetsPrint = {
  readonly files: readonly SheetFile[] /** Size of the steps by paper and procedure, points. */
  readonly points: ReadonlyMap<string, number>
}

async function printSheet(page: Page, { system }: { system: UnitSystem }): Promise<OneSheet> {
  const fit = await fitSheet(page, (points) => readingDistanceWords(points, system))
  const inInk = async (ink: Ink): Promise<Uint8Array> => {
    await page.evaluate((dress) => {
      document.body.className = dress
    }, ink)
    // Of all the sizes that were tried only the last may be on paper.
    await freshFonts(page)
    return toPdf(page, { tagged: true })
  }
  const color = await inInk('color')
  return { points: stepPoints(fit), printed: { color, black: await inInk('black') } }
}

/** @throws Error when a sheet has not come out as one page. */
const finishSheet = (press: Press, bytes: Uint8Array, about: PdfAbout): Promise<Uint8Array> =>
  press.keep([JSON.stringify(about), bytes], async () => {
    const printed = await PDFDocument.load(bytes, { updateMetadata: false })
    if (printed.getPageCount() !== 1)
      throw new Error(`${printed.getPageCount()} pages instead of one`)
    return finishPdf(printed, about)
  })

const allInOne = (
  press: Press,
  sheets: readonly Uint8Array[],
  about: PdfAbout,
): Promise<Uint8Array> =>
  press.keep([JSON.stringify(about), ...sheets], async () => {
    const merger = await createMerger()
    const pages = []
    for (const bytes of sheets)
      pages.push(...merger.add(await PDFDocument.load(bytes, { updateMetadata: false })))
    return finishPdf(merger.finish(pages), about)
  })

/**
 * Prints posted sheets, one page each at the largest type that fits, on every paper in color and in
 * black: each in a file of its own, and all in one.
 * @throws Error naming the sheet that does not fit or does not come out as one page.
 */
export async function printSheets(
  press: Press,
  sheets: Sheets,
  about: PdfAbout,
  system: UnitSystem,
  tell: (what: string) => void,
): Promise<SheetsPrint> {
  let done = 0
  const jobs = sheets.papers.flatMap((paper) => sheets.sheets.map((sheet) => ({ paper, sheet })))
  const printed = await Promise.all(
    jobs.map(async ({ paper, sheet }) => {
      const own = { ...about, title: sheet.title, seed: `${about.seed}/${paper.name}/${sheet.id}` }
      try {
        const { points, printed } = await press.run(
          { css: paper.css, body: sheet.body },
          { system },
          printSheet,
        )
        const finished = await Promise.all(
          inks.map(
            async (ink): Promise<readonly [Ink, Uint8Array]> => [
              ink,
              await finishSheet(press, printed[ink], { ...own, seed: `${own.seed}/${ink}` }),
            ],
          ),
        )
        return { points, printed, finished: new Map(finished) }
      } catch (error) {
        throw new Error(
          `sheet ${sheet.id} on ${paper.name}: ${error instanceof Error ? error.message : String(error)}`,
          { cause: error },
        )
      } finally {
        done++
        tell(`sheet ${done} of ${jobs.length}`)
      }
    }),
  )
  const files = jobs.flatMap(({ paper, sheet }, i) =>
    inks.map(
      (ink): SheetFile => ({
        paper: paper.name,
        ink,
        id: sheet.id,
        bytes: printed[i]?.finished.get(ink) ?? new Uint8Array(),
      }),
    ),
  )
  const together = await Promise.all(
    sheets.papers.flatMap((paper) =>
      inks.map(async (ink): Promise<SheetFile> => {
        const own = printed.flatMap((p, i) => (jobs[i]?.paper === paper ? [p.printed[ink]] : []))
        return {
          paper: paper.name,
          ink,
          id: undefined,
          bytes: await allInOne(press, own, {
            ...about,
            seed: `${about.seed}/${paper.name}/${ink}`,
          }),
        }
      }),
    ),
  )
  return {
    files: [...files, ...together],
    points: new Map(
      jobs.map(({ paper, sheet }, i) => [`${paper.name}/${sheet.id}`, printed[i]?.points ?? 0]),
    ),
  }
}
