import { sheetFile } from '../../read/sheet-table.ts'
import type { Sheet } from '../../read/workbook/sheet.ts'
import { partHead } from '../../validate/imports/table-columns.ts'
import { type FoundSheet, nothingFound } from './found.ts'
import type { Grid, GridCell } from './grid.ts'
import { isHelp } from './read-list.ts'
import { type TableSubject, workbookWords as words } from './subjects.ts'

const nameOf = (head: string): string => partHead(head.trim()).name

/** What the columns of a table may be called; levels may be what a staff reads. */
const namesOf = ({ columns, of }: TableSubject): readonly string[] => [
  ...columns.map((column) => nameOf(column.head)),
  ...(of === 'surface-level' ? ['staff reading'] : []),
]

/** How many heads of a row are those of a table. */
export const headsNamed = (row: readonly GridCell[], subject: TableSubject): number =>
  row.filter((cell) => namesOf(subject).includes(nameOf(cell.text))).length

/** A sheet with some of its cells only. */
const sheetOf = (name: string, rows: readonly (readonly GridCell[])[]): Sheet => ({
  name,
  rows: rows.map((row) =>
    row.map(({ text, kind, row: r, column }) => ({ text, kind, row: r, column })),
  ),
})

/**
 * Reads a sheet of readings: its head and its lines as texts, for the readers of the facility folder.
 * @param index Counted from 0 among the tables of its kind.
 */
export function readTableSheet(grid: Grid, subject: TableSubject, index: number): FoundSheet {
  const at = grid.rows.findIndex((row) => headsNamed(row, subject) >= 2)
  const head = (grid.rows[at] ?? []).filter((cell) => cell.text !== '')
  const by = head.find((cell) => nameOf(cell.text) === words['read-by'])?.column
  const columns = head.map((cell) => cell.column).filter((column) => column !== by)
  const lines = grid.rows
    .slice(at + 1)
    .filter((row) => !isHelp(row) && row.some((c) => c.text !== '' && columns.includes(c.column)))
  const [first] = head
  if (!first || lines.length === 0) return { ...nothingFound, problems: [] }
  const within = (row: readonly GridCell[]) => row.filter((cell) => columns.includes(cell.column))
  const textAt = (row: readonly GridCell[], column: number): string =>
    (row.find((cell) => cell.column === column)?.text ?? '').replace(/\s*[\r\n]+\s*/g, ' ')
  const names = [...new Set(lines.map((row) => (by === undefined ? '' : textAt(row, by))))]
  const file = grid.file.sheet
    ? sheetFile(grid.file.path, sheetOf(grid.name, [head, ...lines].map(within)))
    : grid.file
  return {
    ...nothingFound,
    problems: [],
    tables: [
      {
        subject,
        index,
        texts: [head, ...lines].map((row) => columns.map((column) => textAt(row, column))),
        by: names.filter((name) => name !== '').join(', ') || undefined,
        file,
        place: first.place,
      },
    ],
  }
}
