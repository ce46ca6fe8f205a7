import type { Problem } from '../../model/problem.ts'
import type { CsvCell, CsvTable } from '../../read/read-csv.ts'
import { cellProblem } from './table-columns.ts'

/** Days that a table of days has more than once. */
export const datedTwice = (
  table: CsvTable,
  rows: readonly {
    readonly values: { readonly date: string }
    readonly cells: { readonly date: CsvCell }
  }[],
): Problem[] =>
  rows
    .filter((row, i) => rows.findIndex((r) => r.values.date === row.values.date) < i)
    .map(({ values, cells }) =>
      cellProblem(
        table,
        cells.date,
        'ref/duplicate-id',
        `${values.date} stands here twice`,
        'keep the line that is right',
      ),
    )
