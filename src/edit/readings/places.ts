import { toUnit } from '../../model/quantity/format-quantity.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { foot } from '../../model/quantity/units.ts'
import { type ReadingName, type ReadingTable, unitOfReading } from './table.ts'

/** Where readings are taken, meters: stations along the rail, and lines across the track. */
export type Places = { readonly stations: readonly number[]; readonly offsets: readonly number[] }

/** What places are laid out on, meters, and how many there are. */
export type Ground = {
  readonly rail: number
  readonly width: number
  readonly stations: number
  readonly lines: number
}

const sorted = (all: readonly number[]): readonly number[] =>
  [...new Map(all.map((m) => [m.toFixed(3), m])).values()].sort((a, b) => a - b)

/** To a whole foot, or half a meter: places that a tape shows at once. */
function even(m: number, system: UnitSystem): number {
  const step = system === 'us' ? foot : 0.5
  return Math.round(m / step) * step
}

/** How far from the edges the surface is levelled, m. */
const rim = { us: foot, metric: 0.5 } as const

/**
 * Places that stand ready before anything is read: stations evenly around the rail. Depths lie in the
 * middle of strips of one width, levels from edge to edge, with two lines more, since slopes lie
 * between them. Common practice, no source.
 */
export function readyPlaces(name: ReadingName, ground: Ground, system: UnitSystem): Places {
  const { rail, width, stations, lines } = ground
  const offsets =
    name === 'depth'
      ? Array.from({ length: lines }, (_, i) => ((i + 0.5) * width) / lines)
      : Array.from(
          { length: lines + 2 },
          (_, i) => rim[system] + (i * (width - 2 * rim[system])) / (lines + 1),
        )
  return {
    stations: sorted(
      Array.from({ length: stations }, (_, i) => even((i * rail) / stations, system)),
    ),
    offsets: sorted(offsets.map((m) => even(m, system))),
  }
}

const placesOn = ({ readings }: ReadingTable, date: string): Places => {
  const day = readings.filter((reading) => reading.date === date)
  return {
    stations: sorted(day.map(({ station }) => station)),
    offsets: sorted(day.map(({ offset }) => offset)),
  }
}

const holds = (all: readonly number[], some: readonly number[]): boolean =>
  some.every((m) => all.some((n) => Math.abs(m - n) < 5e-4))

/**
 * The places of a day in a grid: where something was read, and where it still may be. A day that has
 * no place of its own yet goes by the latest one, so that both can be compared.
 * @param known What the grid had before.
 */
export function placesFor(
  table: ReadingTable,
  date: string,
  { known, ready }: { readonly known: Places | undefined; readonly ready: Places | undefined },
): Places {
  const own = placesOn(table, date)
  const others = table.readings.filter((reading) => reading.date !== date)
  const latest = others.toSorted((a, b) => a.date.localeCompare(b.date)).at(-1)?.date
  const before = latest === undefined ? ready : placesOn(table, latest)
  const isPart =
    before && holds(before.stations, own.stations) && holds(before.offsets, own.offsets)
  const more = known ?? (isPart ? before : undefined)
  return {
    stations: sorted([...own.stations, ...(more?.stations ?? [])]),
    offsets: sorted([...own.offsets, ...(more?.offsets ?? [])]),
  }
}

/** A place further on, as far from the last as that is from the one before. */
export function nextPlace(places: readonly number[], system: UnitSystem): number {
  const [before, last] = places.slice(-2)
  if (before === undefined) return 0
  if (last === undefined) return before + 10 * rim[system]
  return last + (last - before)
}

/** A place as it stands at the head of its row or column, in the units of the fair. */
export const placeSaid = (m: number, system: UnitSystem): string =>
  String(Number(toUnit(m, unitOfReading('place', system)).toFixed(2)))
