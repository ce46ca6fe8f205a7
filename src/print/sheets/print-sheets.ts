import { type Ink, inks } from '../../model/ink.ts'
import type { SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheet, Sheets } from '../../render/sheets/render-sheets.ts'
import { finishPart, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { giveWay, inTurn } from '../in-turn.ts'
import { joinWritten } from '../join/join-written.ts'
import type { PartPlace } from '../join/part-place.ts'
import type { WrittenPart } from '../join/write-part.ts'
import { openDocument } from '../pdf/documents.ts'
import type { Press } from '../press/press.ts'
import { printSheet, type SheetPrint } from './print-sheet.ts'

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

export type SheetsJob = {
  readonly sheets: Sheets
  readonly about: PdfAbout
  readonly system: UnitSystem
}

/** A sheet on a paper in an ink, finished for its place among all of them. */
type FinishedSheet = Pick<SheetPrint, 'paper' | 'pages' | 'capitals'> & {
  readonly id: string
  readonly title: string
  readonly ink: Ink
  readonly written: WrittenPart
}

async function finishPrint(bytes: Uint8Array, place: PartPlace): Promise<WrittenPart> {
  // The browser is given its next sheet first, and works while this one is looked at.
  await giveWay()
  const document = openDocument(bytes)
  orderContent(document)
  return finishPart(document, place)
}

/** Prints and finishes a sheet on every paper in both inks. */
const finishSheet = (
  press: Press,
  { sheets: { papers }, system }: SheetsJob,
  sheet: Sheet,
  place: PartPlace,
): Promise<readonly FinishedSheet[]> =>
  press.keep([JSON.stringify([sheet, place, papers, system])], async () => {
    const { id, title } = sheet
    const finished: FinishedSheet[] = []
    for (const { paper, printed, pages, capitals } of await printSheet(
      press,
      system,
      papers,
      sheet,
    ))
      for (const ink of inks)
        finished.push({
          ...{ id, title, paper, ink, pages, capitals },
          written: await finishPrint(printed[ink], place),
        })
    return finished
  })

/** Sheets on one paper in one ink in one file. */
const joinSheets = (sheets: readonly FinishedSheet[], about: PdfAbout): Uint8Array =>
  joinWritten(
    sheets.map((s) => s.written),
    sheets.flatMap((s) => s.written.pages),
    about,
  )

/** A sheet in a file of its own. */
const alone = (sheet: FinishedSheet, { about }: SheetsJob): SheetFile => {
  const { id, title, paper, ink, pages, capitals } = sheet
  const own = { ...about, title, seed: `${about.seed}/${paper}/${id}/${ink}` }
  return { id, paper, ink, pages, capitals, bytes: joinSheets([sheet], own) }
}

/** All sheets on a paper in an ink. */
const together = (
  sheets: readonly FinishedSheet[],
  paper: SheetPaper,
  ink: Ink,
  { about }: SheetsJob,
): SheetFile => ({
  id: undefined,
  paper,
  ink,
  pages: sheets.reduce((sum, s) => sum + s.pages, 0),
  capitals: Math.min(...sheets.map((s) => s.capitals)),
  bytes: joinSheets(sheets, { ...about, seed: `${about.seed}/${paper}/${ink}` }),
})

/**
 * Prints posted sheets, each in the largest type that fits, on every paper in color and in
 * black: each in a file of its own, and all in one. Each is printed by itself, so that a change of one
 * leaves all others as they are.
 * @throws Error naming the sheet that does not fit.
 */
export async function printSheets(
  press: Press,
  job: SheetsJob,
  tell: (what: string) => void,
): Promise<readonly SheetFile[]> {
  const { papers, sheets } = job.sheets
  let done = 0
  const finished = await inTurn(sheets, async (sheet, part) => {
    const own = await finishSheet(press, job, sheet(), { part, of: sheets.length })
    done++
    tell(`sheet ${done} of ${sheets.length}`)
    return own
  })
  const all = finished.flat()
  return [
    ...all.map((sheet) => alone(sheet, job)),
    ...papers.flatMap(({ name }) =>
      inks.map((ink) => {
        const own = all.filter((s) => s.paper === name && s.ink === ink)
        return together(own, name, ink, job)
      }),
    ),
  ]
}
