import type { Place, Problem, Result } from '../../model/problem.ts'
import { readCsv } from '../../read/read-csv.ts'
import { faultInCell, placeInSheet, sheetFile } from '../../read/sheet-table.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { readWorkbook } from '../../read/workbook/read-workbook.ts'
import type { Sheet, SheetCell } from '../../read/workbook/sheet.ts'

/** A cell of a sheet or of a text of separated values, with its place. */
export type GridCell = {
  readonly text: string
  readonly kind: SheetCell['kind']
  readonly place: Place
  /** Counted from 1. */
  readonly row: number
  readonly column: number
}

/** A sheet, or a text of separated values as the one sheet that it is. */
export type Grid = {
  /** What it is called: the title of the sheet, the name of the file without its ending. */
  readonly name: string
  readonly file: SourceFile
  readonly rows: readonly (readonly GridCell[])[]
  /** The place of a cell, also of one that holds nothing. */
  readonly placeAt: (row: number, column: number) => Place
}

/** A file to take in, by its name, with its bytes, and as text where it is one. */
export type TakenFile = {
  readonly name: string
  readonly bytes: Uint8Array
  readonly text: string | undefined
}

function sheetGrid(path: string, sheet: Sheet, problems: Problem[]): Grid {
  const file = sheetFile(path, sheet)
  const rows = sheet.rows.map((row) =>
    row.map((cell): GridCell => {
      const place = placeInSheet(file, row, cell)
      if (cell.kind === 'fault') problems.push(faultInCell(file, place, cell))
      return { ...cell, text: cell.kind === 'fault' ? '' : cell.text.trim(), place }
    }),
  )
  const known = new Map(sheet.rows.map((row) => [row[0]?.row ?? 0, row]))
  return {
    name: sheet.name.trim(),
    file,
    rows,
    placeAt: (row, column) => placeInSheet(file, known.get(row) ?? [], { row, column }),
  }
}

function textGrid(file: SourceFile): Result<Grid> {
  const { value: table, problems } = readCsv(file)
  if (!table) return { value: undefined, problems }
  const rows = [table.head, ...table.rows].map((cells, i) =>
    cells.map(
      ({ text, place }, c): GridCell => ({ text, kind: 'words', place, row: i + 1, column: c + 1 }),
    ),
  )
  const name = file.path.replace(/^.*\//, '').replace(/\.\w+$/, '')
  const placeAt: Grid['placeAt'] = (row, column) =>
    rows[row - 1]?.[column - 1]?.place ??
    rows[row - 1]?.[0]?.place ?? { file: file.path, line: 1, column: 1, length: 1 }
  return { value: { name, file, rows, placeAt }, problems }
}

/** What a file holds: its grids, and all its sheets where it is a workbook. */
export type Opened = { readonly grids: readonly Grid[]; readonly sheets: readonly Sheet[] }

/** Opens a workbook or a text of separated values. */
export function openGrids({ name, bytes, text }: TakenFile): Result<Opened> {
  if (text !== undefined) {
    const { value, problems } = textGrid({ path: name, text })
    return { value: value && { grids: [value], sheets: [] }, problems }
  }
  const { value: sheets, problems } = readWorkbook(name, bytes)
  if (!sheets) return { value: undefined, problems }
  const faults: Problem[] = []
  return {
    value: { grids: sheets.map((sheet) => sheetGrid(name, sheet, faults)), sheets },
    problems: [...problems, ...faults],
  }
}
