import * as z from 'zod'
import type { Place, Problem, Result } from '../../model/problem.ts'
import {
  byStation,
  type Reading,
  type SurveyDay,
  type SurveyKind,
  surveyKinds,
} from '../../model/survey.ts'
import { type CsvCell, type CsvTable, readCsv } from '../../read/read-csv.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import { line } from '../schemas/text.ts'
import { csvName } from './csv-name.ts'
import type { Import } from './import.ts'
import { readRows } from './table-columns.ts'

/** An entry of `surveys` in the facility file: a table of ruler depths or staff levels. */
const surveyEntry = z.strictObject({ of: z.enum(surveyKinds), file: csvName, by: line })

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

type Rows = { readonly rows: readonly SurveyRow[]; readonly problems: readonly Problem[] }

const where = {
  station: { fact: 'survey.station' },
  offset: { fact: 'survey.offset' },
  date: 'day',
} as const

function depthRows(table: CsvTable): Rows {
  const columns = { ...where, depth: { fact: 'survey.depth' } } as const
  const example = 'station (ft), offset (ft), depth (in), date'
  const { rows, problems } = readRows(table, columns, example)
  return {
    rows: rows.map(({ values, cells }) => ({ ...values, value: values.depth, cells })),
    problems,
  }
}

function levelRows(table: CsvTable): Rows {
  const columns = { ...where, level: { fact: 'survey.level' } } as const
  const example = 'station (ft), offset (ft), level (ft), date'
  const { rows, problems } = readRows(table, columns, example)
  return {
    rows: rows.map(({ values, cells }) => ({ ...values, value: values.level, cells })),
    problems,
  }
}

const rowsOf: Readonly<Record<SurveyKind, (table: CsvTable) => Rows>> = {
  'cushion-depth': depthRows,
  'surface-level': levelRows,
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

const byDay = (rows: readonly SurveyRow[]): readonly SurveyDay[] =>
  [...new Set(rows.map((r) => r.date))].sort().map((date) => ({
    date,
    readings: rows
      .filter((r) => r.date === date)
      .sort((a, b) => a.station - b.station || a.offset - b.offset)
      .map(({ station, offset, value }) => ({ station, offset, value })),
  }))

type SurveyEntry = z.output<typeof surveyEntry>

/**
 * Turns a table of readings into surveys by day. All faults are reported at once. Whether readings
 * lie on the track is asked later, when its shape has been worked out.
 * @param at Where the facility file names the table.
 */
export function readSurvey(source: SourceFile, entry: SurveyEntry, at: Place): Result<Survey> {
  const { value: table, problems: tableProblems } = readCsv(source)
  if (!table) return { value: undefined, problems: tableProblems }
  const { rows, problems: cellProblems } = rowsOf[entry.of](table)
  const days = byDay(rows)
  const problems = [
    ...cellProblems,
    ...readTwice(table, rows),
    // Rows with faults are missing from the count, so it would be a false alarm.
    ...(cellProblems.length > 0 ? [] : tooFew(table, rows, days)),
  ]
  if (problems.length > 0) return { value: undefined, problems }
  return { value: { of: entry.of, by: entry.by, at, days, file: table.file, rows }, problems }
}

export const surveys = {
  under: 'top',
  entries: z.array(surveyEntry),
  read: (source, entry, { at }) => readSurvey(source, entry, at),
} as const satisfies Import<SurveyEntry, Survey>
