import type { Problem } from '../../model/problem.ts'
import { problemAt } from '../../read/source-file.ts'
import type { Grid, GridCell } from './grid.ts'
import { isAnswered } from './read-form.ts'
import { headRow } from './read-list.ts'
import { headsNamed } from './read-table.ts'
import type { Subject } from './subjects.ts'

/** Columns of a sheet of entries: what, answer, how to find it, example, name. */
const formColumns = 5

/** Remarks that are shown of a sheet; whoever has written more knows of the others. */
const mostShown = 5

/** Cells of the workbook to fill in that belong to nothing that is asked there. */
function strayCells(grid: Grid, subject: Subject): readonly GridCell[] {
  const cells = grid.rows.flat().filter((cell) => cell.text !== '')
  if (subject.is === 'form') {
    const answered = new Set(
      grid.rows.filter((row) => isAnswered(row, subject.fields)).map((row) => row[0]?.row),
    )
    // Heads stand in the first two rows.
    return cells.filter(
      ({ row, column }) => column > formColumns || (column === 2 && row > 2 && !answered.has(row)),
    )
  }
  const index =
    subject.is === 'list'
      ? headRow(grid, subject).index
      : grid.rows.findIndex((row) => headsNamed(row, subject) >= 2)
  const head = grid.rows[index] ?? []
  const columns = new Set(head.filter((c) => c.text !== '').map((c) => c.column))
  const from = head[0]?.row ?? 0
  return cells.filter(({ row, column }) => row > from && column > 1 && !columns.has(column))
}

/** What somebody has written beside or below what a sheet asks: it is told that nobody reads it. */
export function unreadCells(grid: Grid, subject: Subject): readonly Problem[] {
  const stray = strayCells(grid, subject)
  const [first] = stray
  if (!first) return []
  const named = stray.slice(0, mostShown).map(({ place, text }) => {
    const words = text.length > 40 ? `${text.slice(0, 37)}…` : text
    return `${place.cell?.name} "${words.replace(/\s+/g, ' ')}"`
  })
  const more = stray.length - named.length
  return [
    problemAt(
      grid.file,
      first.place,
      'schema/unknown-key',
      `nothing here asks for ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}: it was not read, and stays as it is`,
      { severity: 'warning' },
    ),
  ]
}
