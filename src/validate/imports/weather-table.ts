import { dayNumber, dayOfYear } from '../../model/day.ts'
import { daylightHours } from '../../model/day-length.ts'
import { hasErrors, type Problem, type Result } from '../../model/problem.ts'
import { inch } from '../../model/quantity/units.ts'
import type { WeatherDay } from '../../model/weather.ts'
import type { CsvTable } from '../../read/read-csv.ts'
import { readTable } from '../../read/read-table.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import { datedTwice } from './dated-twice.ts'
import type { ImportContext } from './import.ts'
import { cellProblem, dayProblems, readRows, type TableRow } from './table-columns.ts'

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

/** More rain in a day, as a mean of ten days or more, than falls anywhere that has a fair; m. */
const mostRain = 0.04

/** Days that are missing between the first and the last, and rain that cannot be. */
function oddRecord(table: CsvTable, rows: readonly Row[]): Problem[] {
  const sorted = rows.toSorted((a, b) => a.values.date.localeCompare(b.values.date))
  const gaps = sorted.slice(1).flatMap((row, i) => {
    const before = sorted[i]?.values.date ?? row.values.date
    const missing = dayNumber(row.values.date) - dayNumber(before) - 1
    return missing > 0
      ? [
          problemAt(
            table.file,
            row.cells.date.place,
            'facility/odd',
            `${missing} days are missing before ${row.values.date}`,
            {
              hint: 'the record is worked through day by day; add them, without rain where there was none',
              severity: 'warning',
            },
          ),
        ]
      : []
  })
  const mean = rows.reduce((sum, { values }) => sum + values.rain, 0) / Math.max(1, rows.length)
  const [first] = rows
  const flood =
    first && rows.length >= 10 && mean > mostRain
      ? [
          cellProblem(
            table,
            first.cells.rain,
            'quantity/range',
            `${(mean * 1000).toFixed(0)} mm (${(mean / inch).toFixed(1)} in) of rain a day on the mean`,
            'is the unit in the head of the column right?',
          ),
        ]
      : []
  return [...gaps, ...flood]
}

/** Sunshine is no longer than the day, at a latitude in degrees. */
const tooSunny = (
  table: CsvTable,
  rows: readonly Row[],
  latitude: number | undefined,
): Problem[] =>
  latitude === undefined
    ? []
    : rows.flatMap(({ values, cells }) => {
        const length = daylightHours((latitude * Math.PI) / 180, dayOfYear(values.date)) + 0.3
        return values.sun !== undefined && cells.sun && values.sun > length * 3600
          ? [
              cellProblem(
                table,
                cells.sun,
                'quantity/range',
                `more sunshine than the ${length.toFixed(1)} h that the day was long`,
                'sunshine is that of the day',
              ),
            ]
          : []
      })

const toDay = ({ values }: Row): WeatherDay => ({
  date: values.date,
  high: values.high,
  low: values.low,
  rain: values.rain,
  humidity: values.humidity,
  wind: values.wind,
  sun: values.sun,
})

/**
 * Turns a table of daily weather into days, oldest first. All faults are reported at once.
 * @param context The sun shines no longer than the day at its latitude, where that is known.
 */
export function readWeather(
  source: SourceFile,
  { latitude, date, units }: Pick<ImportContext, 'latitude' | 'date' | 'units'>,
): Result<readonly WeatherDay[]> {
  const { value: table, problems: tableProblems } = readTable(source)
  if (!table) return { value: undefined, problems: tableProblems }
  const { rows, problems: cellProblems } = readRows(table, columns, example, units)
  const problems = [
    ...cellProblems,
    ...datedTwice(table, rows),
    ...upsideDown(table, rows),
    ...tooSunny(table, rows, latitude),
    ...dayProblems(table, rows, date),
    ...(cellProblems.length > 0 ? [] : oddRecord(table, rows)),
  ]
  if (hasErrors(problems)) return { value: undefined, problems }
  return { value: rows.map(toDay).sort((a, b) => a.date.localeCompare(b.date)), problems }
}
