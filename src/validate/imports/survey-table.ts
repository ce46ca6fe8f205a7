import { hasErrors, type Place, type Problem, type Result } from '../../model/problem.ts'
import { foot, inch } from '../../model/quantity/units.ts'
import { byStation, type Reading, type SurveyDay, type SurveyKind } from '../../model/survey.ts'
import type { CsvCell, CsvTable } from '../../read/read-csv.ts'
import { readTable } from '../../read/read-table.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import { inBothUnits } from '../in-both-units.ts'
import type { ImportContext } from './import.ts'
import { median } from './median.ts'
import { depthOutliers, levelOutliers, medianSlope } from './survey-outliers.ts'
import { dayProblems, readRows } from './table-columns.ts'

/** A reading with the cells that say where it was taken. */
export type SurveyRow = Reading & {
  readonly date: string
  readonly cells: {
    readonly station: CsvCell
    readonly offset: CsvCell
    /** The depth, level or staff reading. */
    readonly value: CsvCell
    readonly date: CsvCell
  }
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

type Units = ImportContext['units']

type Rows = { readonly rows: readonly SurveyRow[]; readonly problems: readonly Problem[] }

const where = {
  station: { fact: 'survey.station' },
  offset: { fact: 'survey.offset' },
  date: 'day',
} as const

function depthRows(table: CsvTable, units: Units): Rows {
  const columns = { ...where, depth: { fact: 'survey.depth' } } as const
  const example = 'station (ft), offset (ft), depth (in), date'
  const { rows, problems } = readRows(table, columns, example, units)
  return {
    rows: rows.map(({ values, cells }) => ({
      ...values,
      value: values.depth,
      cells: { ...cells, value: cells.depth },
    })),
    problems,
  }
}

/** Heights are given as such, or as what a staff reads, which is more where the ground is lower. */
function levelRows(table: CsvTable, units: Units): Rows {
  const staff = table.head.some((cell) => /^staff reading\b/i.test(cell.text))
  const example = `station (ft), offset (ft), ${staff ? 'staff reading' : 'level'} (ft), date`
  if (!staff) {
    const columns = { ...where, level: { fact: 'survey.level' } } as const
    const { rows, problems } = readRows(table, columns, example, units)
    return {
      rows: rows.map(({ values, cells }) => ({
        ...values,
        value: values.level,
        cells: { ...cells, value: cells.level },
      })),
      problems,
    }
  }
  const columns = { ...where, 'staff reading': { fact: 'survey.staff' } } as const
  const { rows, problems } = readRows(table, columns, example, units)
  return {
    // Only differences within a station count, so the height of the instrument does not.
    rows: rows.map(({ values, cells }) => ({
      ...values,
      value: -values['staff reading'],
      cells: { ...cells, value: cells['staff reading'] },
    })),
    problems,
  }
}

const rowsOf: Readonly<Record<SurveyKind, (table: CsvTable, units: Units) => Rows>> = {
  'cushion-depth': depthRows,
  'surface-level': levelRows,
}

/** The readings of a table that have no fault of their own, in its order. */
export const surveyRows = (table: CsvTable, of: SurveyKind, units: Units): readonly SurveyRow[] =>
  rowsOf[of](table, units).rows

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
    const wanted = 'at least three stations, each with at least two readings from the rail outward'
    if (stations.length < 3)
      return [
        problemAt(
          table.file,
          first.cells.station.place,
          'schema/missing',
          `the survey of ${day.date} has too few stations: ${stations.length}`,
          { hint: wanted },
        ),
      ]
    return stations.flatMap(({ station, readings }) => {
      const row = rows.find((r) => r.date === day.date && r.station === station)
      if (readings.length >= 2 || !row) return []
      return [
        problemAt(
          table.file,
          row.cells.station.place,
          'schema/missing',
          `station ${row.cells.station.text} has one reading alone on ${day.date}`,
          { hint: `add a second one of that station, or delete this row; a survey has ${wanted}` },
        ),
      ]
    })
  })
}

/** A distance for readers of either system: `2.1 in (53 mm)`. */
const saidIn = (units: Units) => (off: number) => {
  const m = Math.abs(off)
  return m < foot
    ? inBothUnits(units, {
        us: `${(m / inch).toFixed(1)} in`,
        metric: `${Math.round(m * 1000)} mm`,
      })
    : inBothUnits(units, { us: `${(m / foot).toFixed(1)} ft`, metric: `${m.toFixed(2)} m` })
}

/** Readings that their neighbours do not bear out: asked about, or refused where none can be so. */
const oddReadings = (
  table: CsvTable,
  of: SurveyKind,
  rows: readonly SurveyRow[],
  units: Units,
): Problem[] =>
  [...new Set(rows.map((r) => r.date))].flatMap((date) => {
    const day = rows.filter((r) => r.date === date)
    const outliers = of === 'cushion-depth' ? depthOutliers(day) : levelOutliers(day)
    return outliers.map(({ reading, off, credible }) =>
      problemAt(
        table.file,
        reading.cells.value.place,
        'quantity/range',
        of === 'cushion-depth'
          ? `this depth is ${saidIn(units)(off)} ${off > 0 ? 'more' : 'less'} than the middle one of that day`
          : `this level is ${saidIn(units)(off)} ${off > 0 ? 'above' : 'below'} the others of its station`,
        {
          hint: credible
            ? 'read it again; where it is so, leave it'
            : 'was it mistyped? where it is so, mend the place and leave the line out',
          severity: credible ? 'warning' : 'error',
        },
      ),
    )
  })

/** The surface of an oval rises outward; one that falls was most likely read off a staff. */
function fallsAway(
  table: CsvTable,
  rows: readonly SurveyRow[],
  days: readonly SurveyDay[],
): Problem[] {
  const staff = table.head.some((cell) => /^staff reading\b/i.test(cell.text))
  return days.flatMap((day) => {
    const mean = median(byStation(day.readings).map(({ readings }) => medianSlope(readings)))
    const first = rows.find((r) => r.date === day.date)
    if (!first || mean >= 0) return []
    return [
      problemAt(
        table.file,
        first.cells.value.place,
        'quantity/range',
        `on ${day.date} the surface falls ${(-100 * mean).toFixed(1)} % away from the rail`,
        {
          hint: staff
            ? 'are these heights? then call the column "level"'
            : 'are these readings on a staff, which reads more where the ground is lower? then call the column "staff reading"',
        },
      ),
    ]
  })
}

const byDay = (rows: readonly SurveyRow[]): readonly SurveyDay[] =>
  [...new Set(rows.map((r) => r.date))].sort().map((date) => ({
    date,
    readings: rows
      .filter((r) => r.date === date)
      .sort((a, b) => a.station - b.station || a.offset - b.offset)
      .map(({ station, offset, value }) => ({ station, offset, value })),
  }))

/** What the facility file says of a table of readings. */
type Told = { readonly of: SurveyKind; readonly by: string }

/**
 * Turns a table of readings into surveys by day. All faults are reported at once. Whether readings
 * lie on the track is asked later, when its shape has been worked out.
 * @param context Where the facility file names the table, and the date of the manual.
 */
export function readSurvey(
  source: SourceFile,
  entry: Told,
  { at, date, units }: Pick<ImportContext, 'at' | 'date' | 'units'>,
): Result<Survey> {
  const { value: table, problems: tableProblems } = readTable(source)
  if (!table) return { value: undefined, problems: tableProblems }
  const { rows, problems: cellProblems } = rowsOf[entry.of](table, units)
  const days = byDay(rows)
  const problems = [
    ...cellProblems,
    ...readTwice(table, rows),
    // Rows with faults are missing from the count, so it would be a false alarm.
    ...(cellProblems.length > 0 ? [] : tooFew(table, rows, days)),
  ]
  if (problems.length > 0) return { value: undefined, problems }
  const odd = [
    ...oddReadings(table, entry.of, rows, units),
    ...(entry.of === 'surface-level' ? fallsAway(table, rows, days) : []),
    ...dayProblems(
      table,
      rows.map((row) => ({ values: row, cells: row.cells })),
      date,
    ),
  ]
  if (hasErrors(odd)) return { value: undefined, problems: odd }
  return { value: { of: entry.of, by: entry.by, at, days, file: table.file, rows }, problems: odd }
}
