import { hasErrors, type Place, type Result } from '../../model/problem.ts'
import { readTable } from '../../read/read-table.ts'
import type { SourceFile } from '../../read/source-file.ts'
import type { ImportContext } from './import.ts'
import { dayProblems, readRows } from './table-columns.ts'

/** Samples of the cushion's moisture: shares by dry weight, by day, oldest first. */
export type MoistureSamples = {
  readonly by: string
  readonly at: Place
  readonly days: readonly { readonly date: string; readonly values: readonly number[] }[]
}

const columns = {
  date: 'day',
  station: { fact: 'survey.station', optional: true },
  offset: { fact: 'survey.offset', optional: true },
  moisture: { fact: 'cushion.moisture.found' },
} as const
const example = 'date, station (ft), offset (ft), moisture (%)'

/** Turns a table of samples into days. All faults are reported at once. */
export function readMoisture(
  source: SourceFile,
  { by }: { readonly by: string },
  { at, date, units }: Pick<ImportContext, 'at' | 'date' | 'units'>,
): Result<MoistureSamples> {
  const { value: table, problems: tableProblems } = readTable(source)
  if (!table) return { value: undefined, problems: tableProblems }
  const { rows, problems: cellProblems } = readRows(table, columns, example, units)
  const problems = [...cellProblems, ...dayProblems(table, rows, date)]
  if (hasErrors(problems)) return { value: undefined, problems }
  const dates = [...new Set(rows.map(({ values }) => values.date))].sort()
  const days = dates.map((day) => ({
    date: day,
    values: rows.filter(({ values }) => values.date === day).map(({ values }) => values.moisture),
  }))
  return { value: { by, at, days }, problems }
}
