import type { Laid, LaidSheet } from '../../edit/workbook/layout.ts'
import { columnName } from '../../read/workbook/sheet.ts'

/** Numbers of papers (ECMA-376-1, 18.3.1.63). */
const papers: Readonly<Record<Laid['paper'], number>> = { letter: 1, a4: 9 }

/** Characters that a page lying on its side has room for in letters that can still be read. */
const mostAcross = 190

/** How many pages a sheet takes beside each other. */
const across = ({ widths, printed }: LaidSheet): number =>
  Math.max(1, Math.ceil(widths.slice(0, printed).reduce((a, b) => a + b, 0) / mostAcross))

/** A sheet as wide as its pages, on the paper of the place. */
export function withPage(xml: string, sheet: LaidSheet, paper: Laid['paper']): string {
  if (sheet.hidden) return xml
  const setup = `<pageSetup paperSize="${papers[paper]}" orientation="landscape" fitToWidth="${across(sheet)}" fitToHeight="0"/>`
  const fit = '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>'
  const withFit = xml.replace(/<worksheet [^>]*>(?:<sheetPr\/>)?/, (start) => `${start}${fit}`)
  return /<pageSetup [^>]*\/>/.test(withFit)
    ? withFit.replace(/<pageSetup [^>]*\/>/, setup)
    : withFit.replace('</worksheet>', `${setup}</worksheet>`)
}

/** Heads that are printed on every page, and the columns that are printed, by sheet. */
export function withPrinted(xml: string, sheets: readonly LaidSheet[]): string {
  const names = sheets.flatMap(({ title, heads, printed, widths, rows: all, hidden }, i) => {
    if (hidden) return []
    const quoted = `'${title}'!`
    const rows = heads.rows > 0 ? [`${quoted}$1:$${heads.rows}`] : []
    const columns = heads.columns > 0 ? [`${quoted}$A:$${columnName(heads.columns)}`] : []
    const titles = [...columns, ...rows].join(',')
    return [
      ...(printed < widths.length
        ? [
            `<definedName name="_xlnm.Print_Area" localSheetId="${i}">${quoted}$A$1:$${columnName(printed)}$${all.length}</definedName>`,
          ]
        : []),
      ...(titles === ''
        ? []
        : [`<definedName name="_xlnm.Print_Titles" localSheetId="${i}">${titles}</definedName>`]),
    ]
  })
  return xml.replace('</sheets>', `</sheets><definedNames>${names.join('')}</definedNames>`)
}
