import { closest } from '../model/closest.ts'
import { factSpec } from '../model/fact-spec.ts'
import type { Place, Problem, Result } from '../model/problem.ts'
import { byStation, type Reading, type SurveyDay, type SurveyedOval, type SurveyKind } from '../model/survey.ts'
import type { CsvCell, CsvTable } from '../read/read-csv.ts'
import { problemAt } from '../read/source-file.ts'
import { readMeasured } from './schemas/quantity.ts'

/** The surveys of one file, oldest first. */
export type Survey = { readonly of: SurveyKind; readonly by: string; readonly at: Place; readonly days: readonly SurveyDay[] }

/** The name of a column and, where the head gives one, the unit of all its cells: `station (ft)`. */
const columnHead = /^([a-z]+)(?:\s*[([]\s*(.+?)\s*[)\]])?$/

const valueName: Readonly<Record<SurveyKind, string>> = { 'cushion-depth': 'depth', 'surface-level': 'level' }
const factOf: Readonly<Record<string, string>> = { station: 'survey.station', offset: 'survey.offset', depth: 'survey.depth', level: 'survey.level' }

type Column = { readonly index: number; readonly unit: string }

function columns(table: CsvTable, names: readonly string[]): Result<Readonly<Record<string, Column>>> {
  const problems: Problem[] = []
  const found: Record<string, Column> = {}
  for (const [index, { text, place }] of table.head.entries()) {
    const [, name = text, unit = ''] = columnHead.exec(text.toLowerCase()) ?? []
    if (names.includes(name) && !(name in found)) found[name] = { index, unit }
    else {
      const near = closest(name, names)
      problems.push(problemAt(table.file, place, 'schema/unknown-key', name in found ? `the column "${name}" stands here twice` : `unknown column "${text}"`, { hint: near && !(near in found) ? `did you mean "${near}"?` : `the columns are ${names.join(', ')}` }))
    }
  }
  const missing = names.filter((n) => !(n in found))
  const head = table.head[0]
  if (missing.length > 0 && head) problems.push(problemAt(table.file, head.place, 'schema/missing', `the head lacks ${missing.map((m) => `"${m}"`).join(', ')}`, { hint: `write it as, for example: station (ft), offset (ft), ${names[2]} (in), date` }))
  return problems.length > 0 ? { value: undefined, problems } : { value: found, problems }
}

const isDay = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toString() !== 'Invalid Date' && new Date(`${text}T00:00:00Z`).toISOString().startsWith(text)

/** Widest the track is anywhere: a reading farther out lies beside it. */
const widest = (oval: SurveyedOval): number => Math.max(oval.widthStraights, oval.widthTurns)

type Row = Reading & { readonly date: string; readonly place: Place }

/**
 * Turns a table of readings into surveys by day. All faults are reported at once.
 * @param oval Stations must lie on its rail, offsets on its width.
 */
export function checkSurvey(table: CsvTable, of: SurveyKind, by: string, at: Place, oval: SurveyedOval): Result<Survey> {
  const value = valueName[of]
  const names = ['station', 'offset', value, 'date']
  const { value: found, problems: headProblems } = columns(table, names)
  if (!found) return { value: undefined, problems: headProblems }
  const problems: Problem[] = []
  const tell = (cell: CsvCell, ...[code, message, hint]: [Problem['code'], string, string?]): void => void problems.push(problemAt(table.file, cell.place, code, message, hint === undefined ? {} : { hint }))

  const quantity = (name: string, row: readonly CsvCell[]): number | undefined => {
    const column = found[name]
    const cell = column && row[column.index]
    const spec = factSpec(factOf[name] ?? '')
    if (!cell || !spec) return undefined
    const bare = /^[-+.\d][\d.,/ -]*$/.test(cell.text)
    const read = readMeasured(spec.path, bare && column.unit !== '' ? `${cell.text} ${column.unit}` : cell.text)
    if ('si' in read) return read.si
    tell(cell, read.params.code, read.message, read.params.hint)
    return undefined
  }

  const rail = 2 * oval.straight + 2 * Math.PI * oval.radius
  const rows = table.rows.flatMap((row): Row[] => {
    const [station, offset, measured] = names.slice(0, 3).map((name) => quantity(name, row))
    const cell = (name: string): CsvCell => row[found[name]?.index ?? 0] as CsvCell
    const date = cell('date')
    if (!isDay(date.text)) tell(date, 'schema/format', `"${date.text}" is no date`, 'expected a date such as 2027-06-12')
    if (station !== undefined && station > rail + 1e-6) tell(cell('station'), 'quantity/range', `station ${cell('station').text} lies beyond the end of the rail`, 'stations are counted once around the rail, from the start of the home straight')
    if (offset !== undefined && offset > widest(oval) + 0.01) tell(cell('offset'), 'quantity/range', `offset ${cell('offset').text} lies outside the track`, 'offsets are measured from the rail, square across')
    return station === undefined || offset === undefined || measured === undefined ? [] : [{ station: station % rail, offset, value: measured, date: date.text, place: cell('station').place }]
  })
  if (problems.length > 0) return { value: undefined, problems }

  const seen = new Set<string>()
  for (const r of rows) {
    const key = `${r.date} ${r.station.toFixed(3)} ${r.offset.toFixed(3)}`
    if (seen.has(key)) problems.push(problemAt(table.file, r.place, 'ref/duplicate-id', 'this place was read twice on that day', { hint: 'keep the reading that is right' }))
    seen.add(key)
  }
  const days = [...new Set(rows.map((r) => r.date))].sort().map((date): SurveyDay => ({
    date,
    readings: rows.filter((r) => r.date === date).sort((a, b) => a.station - b.station || a.offset - b.offset).map((r) => ({ station: r.station, offset: r.offset, value: r.value })),
  }))
  for (const day of days) {
    const stations = byStation(day.readings)
    const thin = stations.some((s) => s.readings.length < 2)
    const first = rows.find((r) => r.date === day.date)
    if (first && (stations.length < 3 || thin)) problems.push(problemAt(table.file, first.place, 'schema/missing', `the survey of ${day.date} has too few readings`, { hint: 'at least three stations, each with at least two readings from the rail outward' }))
  }
  return problems.length > 0 ? { value: undefined, problems } : { value: { of, by, at, days }, problems: [] }
}
