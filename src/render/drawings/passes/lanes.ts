import type { PassPattern } from '../../../model/manual/charts.ts'
import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import { widthAt } from '../oval/shape.ts'

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
