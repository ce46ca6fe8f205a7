import { strFromU8, strToU8, unzipSync } from 'fflate'
import writeWorkbook from 'write-excel-file/universal'
import type { CellRole, Laid, LaidCell, LaidSheet } from '../../edit/workbook/layout.ts'
import { packed } from '../tables/workbook.ts'
import { withPage, withPrinted } from './printed-pages.ts'
import { withHidden, withOpenInputs, withRules } from './sheet-rules.ts'

/** Everything that is written is text, or 1/4 would become a day. */
const text = '@'

const gray = '#F1F1EE'
const line = { borderStyle: 'thin', borderColor: '#C4C4BE' } as const
const base = { wrap: true, alignVertical: 'top', backgroundColor: gray, ...line } as const

const styles = {
  title: { fontWeight: 'bold', fontSize: 13 },
  head: { ...base, fontWeight: 'bold', backgroundColor: '#DDDDD6' },
  group: { fontWeight: 'bold', alignVertical: 'bottom' },
  label: base,
  needed: { ...base, fontWeight: 'bold' },
  note: { ...base, textColor: '#444444' },
  example: { ...base, fontStyle: 'italic', textColor: '#444444' },
  name: { ...base, textColor: '#777777', fontSize: 8 },
  input: { ...line, wrap: true, alignVertical: 'top', format: text },
  spare: { wrap: true, alignVertical: 'top', format: text },
} as const satisfies Readonly<Record<CellRole, object>>

const cellOf = (cell: LaidCell) =>
  cell ? { value: cell.text, type: String, ...styles[cell.role] } : null

/** Lines that a text takes in a column, word by word, as far as letters can be counted. */
const linesOf = (words: string, width: number): number =>
  words.split('\n').reduce((sum, part) => {
    let [lines, filled] = [1, 0]
    for (const word of part.split(' ')) {
      const goesOver = filled > 0 && filled + 1 + word.length > width
      if (goesOver) lines += 1
      filled = goesOver || filled === 0 ? word.length : filled + 1 + word.length
      lines += Math.floor((word.length - 1) / width)
    }
    return sum + lines
  }, 0)

const lineHeight = 15

/**
 * Letters that a column has room for, for each that its width counts: fonts that stand in for the one
 * of the program are wider, small letters narrower.
 */
const room = (role: CellRole): number => (role === 'name' ? 1.3 : 0.88)

/** A row as high as its highest cell; programs that read the file do not all work that out. */
function heightOf(row: readonly LaidCell[], widths: readonly number[]): number {
  const lines = row.map((cell, i) =>
    cell && cell.role !== 'title' && cell.role !== 'group'
      ? linesOf(cell.text, Math.max(1, Math.floor((widths[i] ?? 10) * room(cell.role))))
      : 1,
  )
  return lineHeight * Math.max(1, ...lines) + 3
}

const sheetOf = (sheet: LaidSheet) => ({
  sheet: sheet.title,
  columns: sheet.widths.map((width) => ({ width })),
  ...(sheet.heads.rows > 0 ? { stickyRowsCount: sheet.heads.rows } : {}),
  ...(sheet.heads.columns > 0 ? { stickyColumnsCount: sheet.heads.columns } : {}),
  showGridLines: sheet.open !== undefined,
  orientation: 'landscape' as const,
  data: sheet.rows.map((row) => {
    const height = heightOf(row, sheet.widths)
    return row.map((cell, i) => (i === 0 && cell ? { ...cellOf(cell), height } : cellOf(cell)))
  }),
})

/** Id of the text format in the styles that were written. */
const textFormatOf = (xml: string): string =>
  /<numFmt numFmtId="(\d+)" formatCode="@"\/>/.exec(xml)?.[1] ?? '49'

/**
 * The workbook to fill in (ECMA-376, .xlsx): heads and notes protected, what may be written in open and
 * in text format, choices as lists. The same facility gives the same bytes.
 */
export async function facilityWorkbook({ sheets, paper }: Laid): Promise<Uint8Array> {
  const file = writeWorkbook(sheets.map(sheetOf) as Parameters<typeof writeWorkbook>[0])
  const parts = unzipSync(new Uint8Array(await (await file.toBlob()).arrayBuffer()))
  const change = (name: string, by: (xml: string) => string): void => {
    const part = parts[name]
    if (!part) throw new Error(`a workbook without ${name}`)
    parts[name] = strToU8(by(strFromU8(part)))
  }
  const lists = sheets.at(-2)
  const lengths = (lists?.widths ?? []).map(
    (_, i) => lists?.rows.filter((row) => (row[i]?.text ?? '') !== '').length ?? 0,
  )
  for (const [i, sheet] of sheets.entries())
    change(`xl/worksheets/sheet${i + 1}.xml`, (xml) =>
      withPage(withRules(xml, sheet, { title: lists?.title ?? '', lengths }), sheet, paper),
    )
  change('xl/styles.xml', (xml) => withOpenInputs(xml, textFormatOf(xml)))
  change('xl/workbook.xml', (xml) => withPrinted(withHidden(xml, sheets), sheets))
  return packed(parts)
}
