import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { byStation } from '../../model/survey.ts'
import type { Tables } from '../form/draft.ts'
import { type GridReading, type ReadingTable, readingTable } from './table.ts'

/** So many stations of a day, each with so many readings, are needed before anything is worked out. */
const leastStations = 3
const leastReadings = 2

/** The readings of a day that cannot count yet: those of a station with too few. */
export function waiting(readings: readonly GridReading[]): readonly GridReading[] {
  const stations = byStation(readings.map((r) => ({ ...r, value: 0 })))
  const isFew = (count: number): boolean => count < leastReadings
  const whole = stations.filter((s) => !isFew(s.readings.length))
  if (whole.length < leastStations) return readings
  const few = stations.filter((s) => isFew(s.readings.length)).map((s) => s.station)
  return readings.filter(({ station }) => few.includes(station))
}

const datesOf = ({ readings }: ReadingTable): readonly string[] => [
  ...new Set(readings.map(({ date }) => date)),
]

/** All readings of a table that cannot count yet, day by day. */
export const waitingIn = (table: ReadingTable): readonly GridReading[] =>
  datesOf(table).flatMap((day) => waiting(table.readings.filter(({ date }) => date === day)))

/**
 * Tables as far as they are whole, so that a station that is just being read hides nothing of the
 * others. What waits leaves an empty line, so that all others keep their numbers.
 */
export function fittingTables(tables: Tables, system: UnitSystem): Tables {
  return new Map(
    [...tables].map(([name, text]): [string, string] => {
      const table = readingTable(text, system)
      const left = table ? waitingIn(table) : []
      if (!table || left.length === 0 || left.length === table.readings.length) return [name, text]
      const out = new Set(left.map(({ line }) => line))
      return [name, table.lines.map((line, i) => (out.has(i + 1) ? '' : line)).join('\n')]
    }),
  )
}
