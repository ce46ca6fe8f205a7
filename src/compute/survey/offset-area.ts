import { positive } from '../materials/guards.ts'

const needs = (offsets: readonly number[], least: number): void => {
  if (offsets.length < least) throw new RangeError(`at least ${least} offsets are needed`)
}

/**
 * Area between a straight line and a bent edge, from offsets at even distances, by trapezoids.
 *
 *     A = d [(first + last) ÷ 2 + Σ others]
 *
 * @param offsets m, at least two.
 * @param spacing Distance between offsets, m, above 0.
 * @returns m², not rounded.
 * @throws RangeError when there are too few offsets, or the spacing is not above zero.
 * @see geometry
 */
export function trapezoidArea(offsets: readonly number[], spacing: number): number {
  needs(offsets, 2)
  const sum = offsets.reduce((total, y) => total + y, 0)
  return positive('spacing', spacing) * (sum - ((offsets[0] ?? 0) + (offsets.at(-1) ?? 0)) / 2)
}

/**
 * The same by parabolas (Simpson). They need an odd number of offsets; with an even number the last
 * strip is a trapezoid.
 *
 *     A = d ÷ 3 [first + last + 4 Σ odd + 2 Σ even]
 *
 * @param offsets m, at least three.
 * @param spacing Distance between offsets, m, above 0.
 * @returns m², not rounded.
 * @throws RangeError when there are too few offsets, or the spacing is not above zero.
 * @see geometry
 */
export function simpsonArea(offsets: readonly number[], spacing: number): number {
  needs(offsets, 3)
  if (offsets.length % 2 === 0)
    return simpsonArea(offsets.slice(0, -1), spacing) + trapezoidArea(offsets.slice(-2), spacing)
  const weight = (i: number): number =>
    i === 0 || i === offsets.length - 1 ? 1 : i % 2 === 1 ? 4 : 2
  return (
    (positive('spacing', spacing) / 3) * offsets.reduce((total, y, i) => total + weight(i) * y, 0)
  )
}
