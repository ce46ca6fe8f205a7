import type { Ink } from '../../model/ink.ts'
import type { Manual } from '../../model/manual.ts'
import { leastCapitals, type SheetPaper } from '../../model/papers.ts'
import type { RenderAssets } from '../assets.ts'
import { renderSheets } from '../sheets/render-sheets.ts'
import type { ToPrint } from './print-view.ts'

export type SheetsAsked = {
  readonly paper: SheetPaper
  readonly ink: Ink
  /** Of a procedure, or the sheet of the emergency; all of them where it is left out. */
  readonly id?: string | undefined
}

/**
 * Posted sheets on one paper, each in all its layouts.
 * @throws RangeError when the facility does not print on that paper, or there is no such sheet.
 */
export function sheetsToPrint(
  manual: Manual,
  assets: RenderAssets,
  { paper, ink, id }: SheetsAsked,
): ToPrint {
  const { papers, sheets: all } = renderSheets(manual, assets)
  const css = papers.find(({ name }) => name === paper)?.css
  const sheets = all.map((sheet) => sheet()).filter((sheet) => id === undefined || sheet.id === id)
  const [first] = sheets
  if (css === undefined || !first) throw new RangeError(`no sheet ${id} on ${paper}`)
  const { words } = assets
  return {
    title: id === undefined ? words.site.sheets : first.title,
    advice: [words.printing.noHeads],
    work: {
      kind: 'sheets',
      capitals: leastCapitals(paper),
      system: manual.facility.system,
      sheets,
    },
    hasMargins: false,
    look: ink,
    css: { paper: css, laying: css },
  }
}
