import { isDay } from '../model/day.ts'
import type { Problem, Result } from '../model/problem.ts'
import type { WeatherDay } from '../model/weather.ts'
import type { CsvCell, CsvTable } from '../read/read-csv.ts'
import { cellProblem, findColumns, readCell } from './csv-columns.ts'

/** Columns and the fact whose kind and range each follows. */
const facts: Readonly<Record<string, string>> = {
  high: 'climate.tmax',
  low: 'climate.tmin',
  rain: 'weather.rain',
  humidity: 'climate.humidity',
  wind: 'climate.wind',
  sun: 'climate.sun',
}
const required = ['high', 'low', 'rain'] as const
const optional = ['humidity', 'wind', 'sun'] as const

/**
 * Turns a table of daily weather into days, oldest first. Cells of the optional columns may be
 * empty.
 */
export function checkWeather(table: CsvTable): Result<readonly WeatherDay[]> {
  const { value: columns, problems: headProblems } = findColumns(
    table,
    ['date', ...required],
    optional,
    'date, high (°F), low (°F), rain (in)',
  )
  if (!columns) return { value: undefined, problems: headProblems }
  const problems: Problem[] = []
  const seen = new Set<string>()
  const days = table.rows.map((row): WeatherDay => {
    const cell = (name: string): CsvCell => row[columns[name]?.index ?? 0] as CsvCell
    const read = (name: string): number | undefined => {
      const column = columns[name]
      if (!column || ((optional as readonly string[]).includes(name) && cell(name).text === ''))
        return undefined
      const found = readCell(table, cell(name), column, facts[name] ?? '')
      if (typeof found === 'number') return found
      problems.push(found)
      return undefined
    }
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
    else if (seen.has(date))
      problems.push(
        cellProblem(
          table,
          cell('date'),
          'ref/duplicate-id',
          `${date} stands here twice`,
          'keep the line that is right',
        ),
      )
    seen.add(date)
    const [high, low] = [read('high'), read('low')]
    if (high !== undefined && low !== undefined && high < low)
      problems.push(
        cellProblem(
          table,
          cell('high'),
          'quantity/range',
          'the high is below the low',
          'have the two columns changed places?',
        ),
      )
    return {
      date,
      high: high ?? 0,
      low: low ?? 0,
      rain: read('rain') ?? 0,
      humidity: read('humidity'),
      wind: read('wind'),
      sun: read('sun'),
    }
  })
  return problems.length > 0
    ? { value: undefined, problems }
    : { value: days.sort((a, b) => a.date.localeCompare(b.date)), problems }
}
