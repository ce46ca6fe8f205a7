import type { Place, Problem, Result } from '../model/problem.ts'
import { type CsvCell, type CsvTable, noRows } from './read-csv.ts'
import { problemAt, type SourceFile } from './source-file.ts'
import { cellName, type Sheet, type SheetCell } from './workbook/sheet.ts'

const between = ' | '

/** A cell's words on one line. */
const oneLine = (text: string): string => text.trim().replace(/\s*[\r\n]+\s*/g, ' ')

/** The texts of a row from its first column to its last. */
function textsOf(row: readonly SheetCell[]): readonly string[] {
  const texts = Array.from({ length: row.at(-1)?.column ?? 0 }, () => '')
  for (const cell of row) texts[cell.column - 1] = oneLine(cell.text)
  return texts
}

/** A sheet as a file of text, a line for each row, so that problems can show the row. */
export function sheetFile(path: string, sheet: Sheet): SourceFile {
  const lines: string[] = []
  for (const row of sheet.rows) {
    const number = row[0]?.row ?? 1
    while (lines.length < number - 1) lines.push('')
    lines.push(textsOf(row).join(between))
  }
  return { path, text: lines.join('\n'), sheet }
}

/** Where a cell of a row stands, also one that is empty. */
export function placeInSheet(
  file: SourceFile,
  row: readonly SheetCell[],
  at: { readonly row: number; readonly column: number },
): Place {
  const before = Array.from({ length: at.column - 1 }, (_, i) =>
    oneLine(row.find((cell) => cell.column === i + 1)?.text ?? ''),
  )
  const text = oneLine(row.find((cell) => cell.column === at.column)?.text ?? '')
  return {
    file: file.path,
    line: at.row,
    column: before.reduce((sum, part) => sum + part.length + between.length, 1),
    length: Math.max(1, text.length),
    cell: { sheet: file.sheet?.name ?? '', name: cellName(at) },
  }
}

/** What is said of a formula whose result is missing or a fault. */
export const faultInCell = (file: SourceFile, place: Place, { text }: SheetCell): Problem =>
  problemAt(
    file,
    place,
    'file/format',
    text === ''
      ? 'a formula stands here without its result'
      : `the formula here has no result: ${text}`,
    {
      hint:
        text === ''
          ? 'open the workbook in a spreadsheet program and save it; or write the value itself'
          : 'mend the formula, or write the value itself',
    },
  )

/** Reads a sheet as a table: the first row that holds something names the columns. */
export function sheetTable(file: SourceFile, { rows }: Sheet): Result<CsvTable> {
  const records = rows.filter((row) => !row[0]?.text.trimStart().startsWith('#'))
  const [head, ...others] = records
  if (!head || others.length === 0) return { value: undefined, problems: [noRows(file)] }
  const columns = head.map((cell) => cell.column)
  const problems: Problem[] = []
  const cellsOf = (row: readonly SheetCell[]): CsvCell[] => {
    const stray = row.find((cell) => !columns.includes(cell.column))
    if (stray)
      problems.push(
        problemAt(
          file,
          placeInSheet(file, row, stray),
          'schema/format',
          'this column has no head',
          {
            hint: 'write what stands in it above it, or clear the cell',
          },
        ),
      )
    return columns.map((column) => {
      const cell = row.find((c) => c.column === column)
      const place = placeInSheet(file, row, { row: row[0]?.row ?? 1, column })
      if (cell?.kind === 'fault') problems.push(faultInCell(file, place, cell))
      return { text: oneLine(cell?.text ?? ''), place, ...(cell ? { kind: cell.kind } : {}) }
    })
  }
  const value = { file, head: cellsOf(head), rows: others.map(cellsOf) }
  return problems.length > 0 ? { value: undefined, problems } : { value, problems }
}
