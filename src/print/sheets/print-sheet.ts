import type { Ink } from '../../model/ink.ts'
import { leastCapitals, type SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheet, Sheets } from '../../render/sheets/render-sheets.ts'
import { lay } from '../lay/lay.ts'
import type { BrowserPage } from '../page/open-page.ts'
import { toPdf } from '../page/to-pdf.ts'
import type { Press } from '../press/press.ts'
import { capitalsOf, sheetsToFit } from './fit-sheets.ts'

/** A sheet on one paper, as the browser has printed it. */
export type SheetPrint = {
  readonly paper: SheetPaper
  readonly printed: Readonly<Record<Ink, Uint8Array>>
  readonly pages: number
  /** Height of the capitals of its steps, mm. */
  readonly capitals: number
}

async function inInk(page: BrowserPage, ink: Ink): Promise<Uint8Array> {
  await page.evaluate((name) => {
    document.body.className = name
  }, ink)
  return toPdf(page)
}

type Args = {
  readonly system: UnitSystem
  readonly papers: readonly { name: SheetPaper; css: string; capitals: number }[]
}

async function printOnPapers(page: BrowserPage, args: Args): Promise<readonly SheetPrint[]> {
  const { system, papers } = args
  const prints: SheetPrint[] = []
  for (const { name, css, capitals } of papers) {
    const fits = await lay(page, 'sheets', { css, capitals, system })
    const pages = fits.flatMap((fit) => fit.pages)
    const color = await toPdf(page)
    prints.push({
      paper: name,
      printed: { color, black: await inInk(page, 'black') },
      pages: pages.length,
      capitals: Math.min(...pages.map(capitalsOf)),
    })
  }
  return prints
}

/**
 * Prints a sheet on every paper in both inks: two inks of one layout.
 * @throws Error naming the sheet where it does not fit.
 */
export const printSheet = (
  press: Press,
  system: UnitSystem,
  papers: Sheets['papers'],
  sheet: Sheet,
): Promise<readonly SheetPrint[]> =>
  press.run(
    { css: '', body: sheetsToFit([sheet]) },
    {
      system,
      papers: papers.map(({ name, css }) => ({ name, css, capitals: leastCapitals(name) })),
    },
    printOnPapers,
  )
