import { toUnit } from '../../model/quantity/format-quantity.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { SurveyKind } from '../../model/survey.ts'
import { dialectOf, isRecord } from '../../read/csv-dialect.ts'
import { readRecords } from '../../read/csv-fields.ts'
import { readTable } from '../../read/read-table.ts'
import { numberStyle } from '../../validate/imports/number-style.ts'
import { surveyRows } from '../../validate/imports/survey-table.ts'
import { isBare, partHead } from '../../validate/imports/table-columns.ts'

/** What is read at each place, by the name of its column. */
const readingNames = ['depth', 'level', 'staff reading'] as const
export type ReadingName = (typeof readingNames)[number]

/** The fact whose kind and range a reading has. */
export const factOfReading = {
  depth: 'survey.depth',
  level: 'survey.level',
  'staff reading': 'survey.staff',
} as const satisfies Readonly<Record<ReadingName, string>>

export const kindOfReading = (name: ReadingName): SurveyKind =>
  name === 'depth' ? 'cushion-depth' : 'surface-level'

const placeUnit = { us: 'ft', metric: 'm' } as const
const depthUnit = { us: 'in', metric: 'mm' } as const

/** The units in which the people of a fair read a ruler, and a tape or a staff. */
export const unitOfReading = (name: ReadingName | 'place', system: UnitSystem): string =>
  name === 'depth' ? depthUnit[system] : placeUnit[system]

/** Where and when a reading was taken: station and offset in meters. */
export type Spot = { readonly date: string; readonly station: number; readonly offset: number }

export type GridReading = Spot & {
  /** As it is typed: with its unit, where that is not the one of the fair. */
  readonly typed: string
  /** Number of its line in the table, from 1. */
  readonly line: number
}

const columnNames = ['station', 'offset', 'value', 'date'] as const
export type Column = (typeof columnNames)[number]

/** A table as its lines, so that each of them can be exchanged without the others. */
export type ReadingTable = {
  readonly name: ReadingName
  readonly lines: readonly string[]
  readonly delimiter: string
  /** How many columns there are, and where ours stand. */
  readonly wide: number
  readonly columns: Readonly<Record<Column, { readonly index: number; readonly unit: string }>>
  readonly readings: readonly GridReading[]
}

/** A table in which nothing has been read yet. */
export const emptyTable = (name: ReadingName, system: UnitSystem): string => {
  const [place, own] = [unitOfReading('place', system), unitOfReading(name, system)]
  return `station (${place}),offset (${place}),${name} (${own}),date\n`
}

/** A distance in a column whose head says the unit: to a hundredth, which no tape reads finer. */
export const placeIn = (m: number, unit: string): string =>
  String(Number(toUnit(m, unit).toFixed(2)))

const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 5e-4

/** Whether two readings were taken at one place on one day. */
export const isSameSpot = (a: Spot, b: Spot): boolean =>
  a.date === b.date && isNear(a.station, b.station) && isNear(a.offset, b.offset)

type Head = Pick<ReadingTable, 'name' | 'delimiter' | 'wide' | 'columns'>

/** The columns of a table, where each that is needed stands there once. */
function headOf(text: string): Head | undefined {
  const { delimiter, from } = dialectOf(text)
  const head = readRecords(text, delimiter, from)
    .records.find(isRecord)
    ?.map((f) => f.text.trim())
  const parts = (head ?? []).map(partHead)
  const name = readingNames.find((n) => parts.some((part) => part.name === n))
  if (!head || name === undefined) return undefined
  const columns = columnNames.map((column) => {
    const wanted = column === 'value' ? name : column
    const index = parts.findIndex((part) => part.name === wanted)
    return [column, { index, unit: parts[index]?.unit ?? '' }] as const
  })
  if (columns.some(([, { index }]) => index === -1)) return undefined
  return {
    name,
    delimiter,
    wide: head.length,
    columns: Object.fromEntries(columns) as ReadingTable['columns'],
  }
}

/** Whether a line break stands inside a cell, so that lines and rows are not the same. */
const isBroken = (lines: readonly string[]): boolean =>
  lines.some((line) => (line.split('"').length - 1) % 2 === 1)

/** Tables as they were read last: each is asked for several times with every key. */
const known = new Map<string, ReadingTable | undefined>()
const mostKnown = 12

/**
 * A table of readings as it is typed in a grid; undefined where it cannot be: with rows that are no
 * readings, decimal commas, cells over several lines, or other columns.
 */
export function readingTable(text: string, system: UnitSystem): ReadingTable | undefined {
  const key = `${system} ${text}`
  if (!known.has(key)) {
    if (known.size >= mostKnown) known.clear()
    known.set(key, readText(text, system))
  }
  return known.get(key)
}

function readText(text: string, system: UnitSystem): ReadingTable | undefined {
  const lines = text.split('\n')
  const head = isBroken(lines) ? undefined : headOf(text)
  if (!head) return undefined
  const { value: table, problems } = readTable({ path: '', text })
  if (!table)
    return problems.every((p) => p.code === 'file/empty')
      ? { ...head, lines, readings: [] }
      : undefined
  const rows = surveyRows(table, kindOfReading(head.name), system)
  const isComma = numberStyle(table.rows.flat(), '.').mark === ','
  if (isComma || rows.length < table.rows.length) return undefined
  const { unit } = head.columns.value
  const isOwn = unit === '' || unit === unitOfReading(head.name, system)
  const readings = rows.map(({ date, station, offset, cells }) => {
    const { text: own, place } = cells.value
    const typed = isOwn || !isBare(own) ? own : `${own} ${unit}`
    return { date, station, offset, typed, line: place.line }
  })
  return { ...head, lines, readings }
}
