import type { PassPattern } from '../../../model/manual/charts.ts'
import type { OvalGeometry } from '../../../model/manual/geometry.ts'

/** Over how much of a straight the width of the turns runs out to its own, m. */
const longestTaper = 50

/** How wide the track is at a station, m: the width changes within the straight, as it is built. */
export function widthAt(g: OvalGeometry, station: number): number {
  const half = g.railLength / 2
  const along = ((station % half) + half) % half
  if (along >= g.straight) return g.widthTurns
  const taper = Math.min(longestTaper, g.straight / 3)
  const t = Math.min(along, g.straight - along, taper) / taper
  return g.widthTurns + (g.widthStraights - g.widthTurns) * t * t * (3 - 2 * t)
}

/** Strips that lie side by side, numbered in the order in which they are driven. */
export type Lanes = {
  readonly count: number
  /** Width that one strip covers, m. */
  readonly covers: number
  /** How far the work reaches from the rail at a station, m. */
  readonly reach: (station: number) => number
  /** Middle of the strip of a lap (from 0) at a station, m from the rail. */
  readonly middle: (lap: number, station: number) => number
}

type Strips = Pick<PassPattern, 'strips' | 'covers' | 'band' | 'from'>

/** The first and the last strip lie at the edges, the others evenly between them. */
export function lanesOf(g: OvalGeometry, { strips, covers, band, from }: Strips): Lanes {
  const reach = (station: number): number => Math.min(band ?? Infinity, widthAt(g, station))
  const offset = (strip: number, station: number): number =>
    strips < 2 ? covers / 2 : covers / 2 + (strip * (reach(station) - covers)) / (strips - 1)
  return {
    count: strips,
    covers,
    reach,
    middle: (lap, station) => offset(from === 'rail' ? lap : strips - 1 - lap, station),
  }
}
