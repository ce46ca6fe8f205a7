import { notNegative, positive } from './guards.ts'

export type Pile = { /** m */ readonly height: number /** m³ */; readonly volume: number }

const slope = (repose: number): number => {
  if (!(repose > 0 && repose < Math.PI / 2))
    throw new RangeError('angle of repose must lie between level and upright')
  return Math.tan(repose)
}

/**
 * A conical heap.
 *
 *     h = r tan φ,  V = π r² h ÷ 3
 *
 * @param diameter Of the base, m, above 0.
 * @param repose Angle at which the material stands, rad, above 0 and under π/2.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 */
export function conePile(diameter: number, repose: number): Pile {
  const radius = positive('diameter', diameter) / 2
  const height = radius * slope(repose)
  return { height, volume: (Math.PI * radius ** 2 * height) / 3 }
}

/**
 * A windrow: a prism of triangular section with half a cone at each end.
 * @param width Of the base, m, above 0.
 * @param ridge Length of the crest, m, ≥ 0; the half cones come on top.
 * @param repose Angle at which the material stands, rad, above 0 and under π/2.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 */
export function windrowPile(width: number, ridge: number, repose: number): Pile {
  const ends = conePile(width, repose)
  return {
    height: ends.height,
    volume: ends.volume + 0.5 * width * ends.height * notNegative('length of the crest', ridge),
  }
}
