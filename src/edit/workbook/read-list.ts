import { didYouMean } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import { problemAt } from '../../read/source-file.ts'
import { partHead } from '../../validate/imports/table-columns.ts'
import { asKey, entryCalled } from '../../validate/schema-advice/near-name.ts'
import { type CellStyles, guessedRole, lostZero, readValue } from './cell-values.ts'
import type { Field } from './fields.ts'
import { type FoundRow, type FoundSheet, type FoundValue, nothingFound } from './found.ts'
import type { Grid, GridCell } from './grid.ts'
import { type ListSubject, workbookWords as words } from './subjects.ts'

/** A column that holds an entry. */
type Column = { readonly field: Field; readonly column: number; readonly unit: string }

/** The entry that a head names: by key or label, with or without a unit, or as people call it. */
function fieldOfHead(head: string, { at, fields }: ListSubject): Field | undefined {
  const name = asKey(partHead(head).name)
  const whole = asKey(head)
  const other = entryCalled(head)
  return (
    fields.find((f) => [whole, name].includes(f.key) || f.key === head.trim()) ??
    fields.find((f) => [whole, name].includes(asKey(f.about.label))) ??
    fields.find((f) => other !== '' && f.path.join('.') === other) ??
    fields.find((f) => [...at, name].join('.') === f.path.join('.'))
  )
}

/** The columns that the heads of a row name. */
function columnsOf(row: readonly GridCell[], subject: ListSubject): readonly Column[] {
  return row.flatMap((cell) => {
    const field = cell.text === '' ? undefined : fieldOfHead(cell.text, subject)
    const { unit } = partHead(cell.text)
    // A label may have brackets of its own; then they are no unit.
    const isLabel = field !== undefined && asKey(field.about.label) === asKey(cell.text)
    return field ? [{ field, column: cell.column, unit: isLabel ? '' : unit }] : []
  })
}

/** The row that names the most columns, of the first that hold something. */
export function headRow(
  { rows }: Grid,
  subject: ListSubject,
): { readonly index: number; readonly columns: readonly Column[] } {
  const looked = rows.slice(0, 6).map((row, index) => ({ index, columns: columnsOf(row, subject) }))
  return looked.reduce((a, b) => (b.columns.length > a.columns.length ? b : a), {
    index: -1,
    columns: [],
  })
}

/** Rows of the workbook to fill in that say what belongs into the others. */
export const isHelp = (row: readonly GridCell[]): boolean =>
  row[0]?.column === 1 && [words.how, words['such-as']].includes(row[0].text)

function unknownHeads(
  row: readonly GridCell[],
  columns: readonly Column[],
  grid: Grid,
  { fields }: ListSubject,
): Problem[] {
  return row
    .filter((cell) => cell.text !== '' && !columns.some((c) => c.column === cell.column))
    .map((cell) =>
      problemAt(grid.file, cell.place, 'schema/unknown-key', `unknown column "${cell.text}"`, {
        hint:
          didYouMean(
            cell.text,
            fields.map((f) => f.about.label),
          ) ?? `the columns are ${fields.map((f) => f.about.label).join(', ')}`,
      }),
    )
}

/** Reads a sheet with a line for each of a list. */
export function readList(grid: Grid, subject: ListSubject, styles: CellStyles): FoundSheet {
  const { index, columns } = headRow(grid, subject)
  const head = grid.rows[index]
  if (!head) return { ...nothingFound, problems: [] }
  const problems = unknownHeads(head, columns, grid, subject)
  const rows = grid.rows.slice(index + 1).flatMap((row): FoundRow[] => {
    if (isHelp(row) || row.every((cell) => cell.text === '')) return []
    const number = row[0]?.row ?? 1
    const values = new Map<string, FoundValue>()
    for (const { field, column, unit } of columns) {
      const place = grid.placeAt(number, column)
      const cell = row.find((c) => c.column === column)
      const read = cell
        ? readValue(cell, field, grid.file, styles, unit)
        : { value: undefined, problem: undefined }
      if (cell) problems.push(...lostZero(cell, field, grid.file))
      if (read.problem) problems.push(read.problem)
      if (cell) problems.push(...guessedRole(cell, field, grid.file, read.value))
      if (!values.has(field.key)) values.set(field.key, { field, value: read.value, place })
    }
    const place = grid.placeAt(number, row[0]?.column ?? 1)
    return [{ values, place, faulty: false }]
  })
  const place = head[0]?.place ?? grid.placeAt(1, 1)
  return { ...nothingFound, lists: [{ subject, rows, place }], problems }
}
