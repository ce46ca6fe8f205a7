import { notNegative } from '../materials/guards.ts'

/**
 * Earth between two sections, from the mean of the two.
 *
 *     V = L (A1 + A2) ÷ 2
 *
 * Where a section shrinks to nothing this is half as much again as the pyramid it really is.
 * @param first Area of the first section, m², ≥ 0.
 * @param second Area of the second, m², ≥ 0.
 * @param length Between them, m, ≥ 0.
 * @returns m³, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see navedtra-14080
 */
export const endAreaVolume = (first: number, second: number, length: number): number =>
  notNegative('length', length) *
  (notNegative('first section', first) + notNegative('second section', second)) *
  0.5
