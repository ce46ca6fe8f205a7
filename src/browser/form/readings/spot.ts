import { withReading } from '../../../edit/readings/change.ts'
import { changedSpots } from '../../../edit/readings/merged-table.ts'
import { placeSaid } from '../../../edit/readings/places.ts'
import {
  type ReadingTable,
  readingTable,
  type Spot,
  unitOfReading,
} from '../../../edit/readings/table.ts'
import { fill } from '../../../model/pattern.ts'
import type { Sitting } from '../sitting.ts'

/** The table of a name, as it is typed in; undefined where there is none, or none for a grid. */
export function tableOf(sitting: Sitting, name: string): ReadingTable | undefined {
  const text = sitting.draft().tables.get(name)
  return text === undefined ? undefined : readingTable(text, sitting.locale().system)
}

/** Writes a reading into its table, or takes it out; false where that cannot be. */
export function putReading(
  sitting: Sitting,
  name: string,
  spot: Spot,
  typed: string | undefined,
  step = '',
): boolean {
  const table = tableOf(sitting, name)
  if (!table) return false
  return sitting.putTable({ name, text: withReading(table, spot, typed) }, [], step)
}

/** A place along the rail or across, with its unit. */
export function placeWithUnit(sitting: Sitting, m: number): string {
  const { system } = sitting.locale()
  return `${placeSaid(m, system)} ${unitOfReading('place', system)}`
}

/** Where a reading was taken, in words. */
export const spotSaid = (sitting: Sitting, { station, offset }: Spot): string =>
  fill(sitting.said.form.says.readings.spot, {
    station: placeWithUnit(sitting, station),
    offset: placeWithUnit(sitting, offset),
  })

/** Tables whose readings are not all saved, with how many are not. */
export function changedReadings(
  sitting: Sitting,
): readonly { readonly label: string; readonly count: number }[] {
  const { readings } = sitting.said.form.says
  const { system } = sitting.locale()
  return [...sitting.draft().tables].flatMap(([name, text]) => {
    const before = sitting.savedTables().get(name)
    const now = readingTable(text, system)
    if (!now || before === text) return []
    const from = readingTable(before ?? '', system) ?? { ...now, readings: [] }
    const count = changedSpots(from, now).length
    return count === 0
      ? []
      : [{ label: readings.what[now.name === 'depth' ? 'depth' : 'level'], count }]
  })
}
