import { notNegative } from '../materials/guards.ts'

/**
 * Earth between two sections, from the mean of the two.
 *
 *     V = L (A1 + A2) ÷ 2
 *
 * Where a section shrinks to nothing this is half as much again as the pyramid it really is: take
 * `pyramidVolume`.
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

/**
 * Earth between two sections with the section halfway known too; exact for even slopes.
 *
 *     V = L (A1 + 4 Am + A2) ÷ 6
 *
 * @param middle Area of the section at half the length, m², ≥ 0; not the mean of the other two.
 * @returns m³, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 */
export const prismoidVolume = (
  first: number,
  middle: number,
  second: number,
  length: number,
): number =>
  (notNegative('length', length) *
    (notNegative('first section', first) +
      4 * notNegative('middle section', middle) +
      notNegative('second section', second))) /
  6

/**
 * Volume, m³, of a pyramid or a feathered end: base (m²) × length (m) ÷ 3. @throws RangeError when
 * an argument is out of range. @see geometry
 */
export const pyramidVolume = (base: number, length: number): number =>
  (notNegative('base', base) * notNegative('length', length)) / 3
