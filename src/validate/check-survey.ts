import { isDay } from '../model/day.ts'
import type { Place, Problem, Result } from '../model/problem.ts'
import { byStation, type Reading, type SurveyDay, type SurveyKind } from '../model/survey.ts'
import type { CsvCell, CsvTable } from '../read/read-csv.ts'
import { problemAt, type SourceFile } from '../read/source-file.ts'
import { cellProblem, findColumns, readCell } from './csv-columns.ts'

/** A reading with the cells that say where it was taken. */
export type SurveyRow = Reading & {
  readonly date: string
  readonly cells: { readonly station: CsvCell; readonly offset: CsvCell }
}

/** The surveys of one file, oldest first. */
export type Survey = {
  readonly of: SurveyKind
  readonly by: string
  readonly at: Place
  readonly days: readonly SurveyDay[]
  readonly file: SourceFile
  readonly rows: readonly SurveyRow[]
}

const valueName: Readonly<Record<SurveyKind, string>> = {
  'cushion-depth': 'depth',
  'surface-level': 'level',
}

function readRows(table: CsvTable, of: SurveyKind): Result<readonly SurveyRow[]> {
  const names = ['station', 'offset', valueName[of]] as const
  const { value: columns, problems: headProblems } = findColumns(
    table,
    [...names, 'date'],
    [],
    `station (ft), offset (ft), ${valueName[of]} (${of === 'surface-level' ? 'ft' : 'in'}), date`,
  )
  if (!columns) return { value: undefined, problems: headProblems }
  const problems: Problem[] = []
  const rows = table.rows.flatMap((row): SurveyRow[] => {
    const cell = (name: string): CsvCell => row[columns[name]?.index ?? 0] as CsvCell
    const [station, offset, value] = names.map((name) => {
      const column = columns[name]
      const read = column ? readCell(table, cell(name), column, `survey.${name}`) : undefined
      if (typeof read === 'object') problems.push(read)
      return typeof read === 'number' ? read : undefined
    })
    const date = cell('date').text
    if (!isDay(date))
      problems.push(
        cellProblem(
          table,
          cell('date'),
          'schema/format',
          `"${date}" is no date`,
          'expected a date such as 2027-06-12',
        ),
      )
    return station === undefined || offset === undefined || value === undefined
      ? []
      : [
          {
            station,
            offset,
            value,
            date,
            cells: { station: cell('station'), offset: cell('offset') },
          },
        ]
  })
  return problems.length > 0 ? { value: undefined, problems } : { value: rows, problems }
}

function readTwice(table: CsvTable, rows: readonly SurveyRow[]): Problem[] {
  const seen = new Set<string>()
  return rows.flatMap((r) => {
    const key = `${r.date} ${r.station.toFixed(3)} ${r.offset.toFixed(3)}`
    const again = seen.has(key)
    seen.add(key)
    return again
      ? [
          problemAt(
            table.file,
            r.cells.station.place,
            'ref/duplicate-id',
            'this place was read twice on that day',
            { hint: 'keep the reading that is right' },
          ),
        ]
      : []
  })
}

function tooFew(
  table: CsvTable,
  rows: readonly SurveyRow[],
  days: readonly SurveyDay[],
): Problem[] {
  return days.flatMap((day) => {
    const stations = byStation(day.readings)
    const first = rows.find((r) => r.date === day.date)
    if (!first || (stations.length >= 3 && stations.every((s) => s.readings.length >= 2))) return []
    return [
      problemAt(
        table.file,
        first.cells.station.place,
        'schema/missing',
        `the survey of ${day.date} has too few readings`,
        { hint: 'at least three stations, each with at least two readings from the rail outward' },
      ),
    ]
  })
}

/**
 * Turns a table of readings into surveys by day. All faults are reported at once. Whether they lie on
 * the track is asked later, when its shape has been worked out.
 */
export function checkSurvey(
  table: CsvTable,
  of: SurveyKind,
  by: string,
  at: Place,
): Result<Survey> {
  const { value: rows, problems: rowProblems } = readRows(table, of)
  if (!rows) return { value: undefined, problems: rowProblems }
  const days = [...new Set(rows.map((r) => r.date))].sort().map(
    (date): SurveyDay => ({
      date,
      readings: rows
        .filter((r) => r.date === date)
        .sort((a, b) => a.station - b.station || a.offset - b.offset)
        .map((r) => ({ station: r.station, offset: r.offset, value: r.value })),
    }),
  )
  const problems = [...readTwice(table, rows), ...tooFew(table, rows, days)]
  return problems.length > 0
    ? { value: undefined, problems }
    : { value: { of, by, at, days, file: table.file, rows }, problems }
}
