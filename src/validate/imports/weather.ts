import * as z from 'zod'
import type { Problem, Result } from '../../model/problem.ts'
import type { WeatherDay } from '../../model/weather.ts'
import { type CsvTable, readCsv } from '../../read/read-csv.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { csvName } from './csv-name.ts'
import type { Import } from './import.ts'
import { cellProblem, readRows, type TableRow } from './table-columns.ts'

/**
 * The entry of the facility file: a table of daily weather in the facility folder, with humidity,
 * wind and sunshine where they are observed.
 */
const weatherEntry = z.strictObject({ file: csvName })

const columns = {
  date: 'day',
  high: { fact: 'climate.tmax' },
  low: { fact: 'climate.tmin' },
  rain: { fact: 'weather.rain' },
  humidity: { fact: 'climate.humidity', optional: true },
  wind: { fact: 'climate.wind', optional: true },
  sun: { fact: 'climate.sun', optional: true },
} as const
const example = 'date, high (°F), low (°F), rain (in)'

type Row = TableRow<typeof columns>

const datedTwice = (table: CsvTable, rows: readonly Row[]): Problem[] =>
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

const upsideDown = (table: CsvTable, rows: readonly Row[]): Problem[] =>
  rows
    .filter(({ values }) => values.high < values.low)
    .map(({ cells }) =>
      cellProblem(
        table,
        cells.high,
        'quantity/range',
        'the high is below the low',
        'have the two columns changed places?',
      ),
    )

const toDay = ({ values }: Row): WeatherDay => ({
  date: values.date,
  high: values.high,
  low: values.low,
  rain: values.rain,
  humidity: values.humidity,
  wind: values.wind,
  sun: values.sun,
})

/** Turns a table of daily weather into days, oldest first. All faults are reported at once. */
export function readWeather(source: SourceFile): Result<readonly WeatherDay[]> {
  const { value: table, problems: tableProblems } = readCsv(source)
  if (!table) return { value: undefined, problems: tableProblems }
  const { rows, problems: cellProblems } = readRows(table, columns, example)
  const problems = [...cellProblems, ...datedTwice(table, rows), ...upsideDown(table, rows)]
  if (problems.length > 0) return { value: undefined, problems }
  return { value: rows.map(toDay).sort((a, b) => a.date.localeCompare(b.date)), problems }
}

/** A facility has one record at most. */
export const weather = {
  under: 'top',
  entries: weatherEntry,
  read: readWeather,
} as const satisfies Import<z.output<typeof weatherEntry>, readonly WeatherDay[]>
