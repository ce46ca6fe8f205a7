import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { withReading } from './change.ts'
import {
  type GridReading,
  isSameSpot,
  type ReadingTable,
  readingTable,
  type Spot,
} from './table.ts'

/** A reading that both sides have changed, each in another way. */
export type ReadingClash = {
  readonly spot: Spot
  readonly mine: string | undefined
  readonly theirs: string | undefined
}

const typedAt = ({ readings }: ReadingTable, spot: Spot): string | undefined =>
  readings.find((reading) => isSameSpot(reading, spot))?.typed

/** Places where one table says something else than the other. */
export const changedSpots = (from: ReadingTable, to: ReadingTable): readonly Spot[] => {
  const all: readonly GridReading[] = [...to.readings, ...from.readings]
  return all
    .filter((spot, i) => all.findIndex((other) => isSameSpot(other, spot)) === i)
    .filter((spot) => typedAt(from, spot) !== typedAt(to, spot))
}

/**
 * Readings put into a table that somebody else has changed meanwhile. What both have changed stays as
 * it is in the file, and is told.
 * @param base The table that both have started from; empty where there was none.
 * @returns undefined where one of the tables cannot be read by its places.
 */
export function mergedTable(
  { base, mine, theirs }: { readonly base: string; readonly mine: string; readonly theirs: string },
  system: UnitSystem,
): { readonly text: string; readonly clashes: readonly ReadingClash[] } | undefined {
  const [to, now] = [readingTable(mine, system), readingTable(theirs, system)]
  const from = base === '' && to ? { ...to, readings: [] } : readingTable(base, system)
  if (!from || !to || !now) return undefined
  let table = now
  const clashes: ReadingClash[] = []
  for (const spot of changedSpots(from, to)) {
    const [before, wanted, there] = [from, to, now].map((one) => typedAt(one, spot))
    if (there === wanted) continue
    if (there !== before) {
      clashes.push({ spot, mine: wanted, theirs: there })
      continue
    }
    table = readingTable(withReading(table, spot, wanted), system) ?? table
  }
  return { text: table.lines.join('\n'), clashes }
}
