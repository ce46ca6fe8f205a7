import { readRecords } from '../../read/csv-fields.ts'
import { printable } from '../../read/unprintable.ts'
import { isBare } from '../../validate/imports/table-columns.ts'
import {
  type Column,
  type GridReading,
  isSameSpot,
  placeIn,
  type ReadingTable,
  type Spot,
} from './table.ts'

/** A cell; one that holds what stands between cells, or a quote, is quoted (RFC 4180). */
const cell = (text: string, delimiter: string): string =>
  text.includes(delimiter) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text

const isRow = (line: string): boolean => line.trim() !== ''

/** What ends the lines of a table, before the line feed. */
const endOf = ({ lines }: ReadingTable): string => (lines[0]?.endsWith('\r') ? '\r' : '')

const rowText = (table: ReadingTable, cells: readonly string[]): string =>
  cells.map((text) => cell(text, table.delimiter)).join(table.delimiter) + endOf(table)

/** A row with other texts in some of its columns. */
function rowWith(
  table: ReadingTable,
  line: string,
  given: Partial<Readonly<Record<Column, string>>>,
): string {
  const delimiter = table.delimiter as Parameters<typeof readRecords>[1]
  const cells = (readRecords(line.replace(/\r$/, ''), delimiter).records[0] ?? []).map((f) =>
    f.text.trim(),
  )
  for (const [column, text] of Object.entries(given))
    cells[table.columns[column as Column].index] = text
  return rowText(table, cells)
}

/** A reading as it stands in its column, whose head says the unit. */
function valueText({ columns }: ReadingTable, typed: string): string {
  const { unit } = columns.value
  const line = printable(typed).replace(/\s*[\r\n]+\s*/g, ' ')
  const text = line.replace(/(?<=\d),(?=\d{3}\b)/g, '')
  const bare = text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text
  return unit !== '' && isBare(bare) ? bare : text
}

const placeText = (table: ReadingTable, column: 'station' | 'offset', m: number): string => {
  const { unit } = table.columns[column]
  return unit === '' ? `${placeIn(m, 'm')} m` : placeIn(m, unit)
}

const isBefore = (a: Spot, b: Spot): boolean =>
  a.station < b.station - 5e-4 || (a.station < b.station + 5e-4 && a.offset < b.offset)

/** The number of lines above the one where a new reading belongs. */
function placeFor({ readings, lines }: ReadingTable, spot: Spot): number {
  const day = readings.filter(({ date }) => date === spot.date)
  const before = day.filter((reading) => isBefore(reading, spot))
  if (before.length > 0) return Math.max(...before.map(({ line }) => line))
  if (day.length > 0) return Math.min(...day.map(({ line }) => line)) - 1
  return lines.findLastIndex(isRow) + 1
}

function added(table: ReadingTable, spot: Spot, typed: string): string {
  const cells = Array.from({ length: table.wide }, () => '')
  cells[table.columns.station.index] = placeText(table, 'station', spot.station)
  cells[table.columns.offset.index] = placeText(table, 'offset', spot.offset)
  cells[table.columns.value.index] = valueText(table, typed)
  cells[table.columns.date.index] = spot.date
  // A last line without an end gets one.
  const last = table.lines.at(-1) ?? ''
  const lines = last === '' ? table.lines : [...table.lines.with(-1, last + endOf(table)), '']
  return lines.toSpliced(placeFor(table, spot), 0, rowText(table, cells)).join('\n')
}

/** The table with the line of each of some readings exchanged; all others stay to the byte. */
const exchanged = (
  table: ReadingTable,
  which: (reading: GridReading) => boolean,
  given: Partial<Readonly<Record<Column, string>>>,
): string => {
  const lines = [...table.lines]
  for (const reading of table.readings.filter(which))
    lines[reading.line - 1] = rowWith(table, lines[reading.line - 1] ?? '', given)
  return lines.join('\n')
}

/**
 * The text of a table with a reading changed, added or, where nothing is typed, taken out.
 * @param typed With its unit, or a bare number in the unit of the column.
 */
export function withReading(table: ReadingTable, spot: Spot, typed: string | undefined): string {
  const there = table.readings.find((reading) => isSameSpot(reading, spot))
  if (!there) return typed === undefined ? table.lines.join('\n') : added(table, spot, typed)
  if (typed === undefined) return table.lines.toSpliced(there.line - 1, 1).join('\n')
  const value = valueText(table, typed)
  return valueText(table, there.typed) === value
    ? table.lines.join('\n')
    : exchanged(table, (reading) => reading === there, { value })
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 5e-4

/** The text of a table in which a station, or a line across, of one day lies elsewhere. */
export const withPlace = (
  table: ReadingTable,
  date: string,
  { column, from, to }: { column: 'station' | 'offset'; from: number; to: number },
): string =>
  exchanged(table, (reading) => reading.date === date && isNear(reading[column], from), {
    [column]: placeText(table, column, to),
  })

/** The text of a table in which the readings of one day were taken on another. */
export const withDay = (table: ReadingTable, from: string, to: string): string =>
  exchanged(table, ({ date }) => date === from, { date: to })
