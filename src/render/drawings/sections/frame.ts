import type { OvalGeometry } from '../../../model/manual/geometry.ts'

/** One of the two sections: meters, the slopes as shares. */
export type Cut = {
  readonly where: 'straights' | 'turns'
  readonly width: number
  readonly slope: number
  readonly found: number | undefined
}

export const cutsOf = (g: OvalGeometry): readonly [Cut, Cut] => [
  {
    where: 'turns',
    width: g.widthTurns,
    slope: g.crossFallTurns,
    found: g.foundTurns,
  },
  {
    where: 'straights',
    width: g.widthStraights,
    slope: g.crossFallStraights,
    found: g.foundStraights,
  },
]

/** How both sections are drawn: one scale, and one enlargement of heights. */
export type Scale = {
  /** Points a meter across. */
  readonly k: number
  /** How many times too high everything is drawn. */
  readonly factor: number
  /** Points a meter of height. */
  readonly ky: number
}

/** A whole factor, the same for both, with which the higher one takes the height allowed. */
export function scaleOf(cuts: readonly Cut[], across: number, height: number): Scale {
  const k = across / Math.max(...cuts.map((c) => c.width))
  const highest = Math.max(0.001, ...cuts.map((c) => c.width * Math.max(c.slope, c.found ?? 0))) * k
  const factor = Math.max(1, Math.min(12, Math.floor(height / highest)))
  return { k, factor, ky: k * factor }
}
