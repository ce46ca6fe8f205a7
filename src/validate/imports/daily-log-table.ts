import type { LoggedDay } from '../../model/daily-log.ts'
import { hasErrors, type Result } from '../../model/problem.ts'
import { asWritten } from '../../read/harmless-cell.ts'
import { readTable } from '../../read/read-table.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { datedTwice } from './dated-twice.ts'
import type { ImportContext } from './import.ts'
import { dayProblems, readRows } from './table-columns.ts'

const columns = {
  date: 'day',
  use: 'words',
  loads: { fact: 'watering.loads', optional: true },
  stored: { fact: 'water.storage', optional: true },
  work: 'words',
  seen: 'words',
  tomorrow: 'words',
  by: 'words',
} as const
const example = 'date, use, loads, stored (gal), work, seen, tomorrow, by'

const said = (cell: string | undefined): string | undefined =>
  cell === undefined ? undefined : asWritten(cell)

/** Turns a table of daily logs into days, oldest first. All faults are reported at once. */
export function readDailyLog(
  source: SourceFile,
  { date, units }: Pick<ImportContext, 'date' | 'units'>,
): Result<readonly LoggedDay[]> {
  const { value: table, problems: tableProblems } = readTable(source)
  if (!table) return { value: undefined, problems: tableProblems }
  const { rows, problems: cellProblems } = readRows(table, columns, example, units)
  const problems = [...cellProblems, ...datedTwice(table, rows), ...dayProblems(table, rows, date)]
  if (hasErrors(problems)) return { value: undefined, problems }
  const days = rows.map(
    ({ values: { date: day, use, loads, stored, work, seen, tomorrow } }): LoggedDay => ({
      date: day,
      loads,
      stored,
      use: said(use),
      work: said(work),
      seen: said(seen),
      tomorrow: said(tomorrow),
    }),
  )
  return { value: days.sort((a, b) => a.date.localeCompare(b.date)), problems }
}
