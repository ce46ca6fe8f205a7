import { type Refusal, refuse } from '../calculation.ts'
import { positive, share } from './guards.ts'

/** One point of a sieve analysis: the share by mass that passes an opening (m). */
export type Passing = { readonly opening: number; readonly passing: number }

/** Coefficients of uniformity and curvature. */
export type Coefficients = { readonly uniformity: number; readonly curvature: number }

/**
 * Grain size that a given share of a sample is finer than, read from the sieve curve on a
 * logarithmic scale of size.
 * @param wanted Share by mass, 0 to 1: 0.1 for D10.
 * @param curve At least two sieves, in any order; a coarser sieve never passes less.
 * @returns Meters, not rounded; a refusal when the curve does not reach the share.
 * @throws RangeError when an opening or share is out of range, or the curve runs backward.
 * @see astm-d2487
 */
export function grainSize(
  wanted: number,
  curve: readonly Passing[],
): number | Refusal<'sieves-miss-share'> {
  const points = [...curve].sort((a, b) => a.opening - b.opening)
  for (const [i, { opening, passing }] of points.entries()) {
    positive('opening', opening)
    share('share passing', passing)
    if (passing < (points[i - 1]?.passing ?? 0))
      throw new RangeError('a coarser sieve cannot pass less')
  }
  const at = points.findIndex((p) => p.passing >= share('wanted share', wanted))
  const above = points[at]
  const below = points[at - 1]
  if (above && above.passing === wanted) return above.opening
  if (!above || !below) return refuse('sieves-miss-share')
  const t = (wanted - below.passing) / (above.passing - below.passing)
  return Math.exp(Math.log(below.opening) + t * Math.log(above.opening / below.opening))
}

/**
 * Share of a sample that is coarser than a size, read from the sieve curve on a logarithmic scale
 * of size.
 * @param size m, above 0.
 * @returns Share by mass; a refusal when the size lies outside the sieves used.
 */
export function coarserThan(
  size: number,
  curve: readonly Passing[],
): number | Refusal<'size-outside-sieves'> {
  positive('size', size)
  const points = [...curve].sort((a, b) => a.opening - b.opening)
  const at = points.findIndex((p) => p.opening >= size)
  const above = points[at]
  const below = points[at - 1]
  if (above && above.opening === size) return 1 - above.passing
  if (!above || !below) return refuse('size-outside-sieves')
  const t = Math.log(size / below.opening) / Math.log(above.opening / below.opening)
  return 1 - (below.passing + t * (above.passing - below.passing))
}

/**
 * Coefficients of a sieve curve.
 *
 *     Cu = D60 ÷ D10,  Cc = D30² ÷ (D10 × D60)
 *
 * @param d10 D10, m, above 0.
 * @param d30 D30, m, at least D10.
 * @param d60 D60, m, at least D30.
 * @throws RangeError when the sizes are not in order.
 * @see astm-d2487
 */
export function coefficients(d10: number, d30: number, d60: number): Coefficients {
  positive('D10', d10)
  if (!(d10 <= d30 && d30 <= d60 && d60 < Infinity))
    throw new RangeError('grain sizes must be in order')
  return { uniformity: d60 / d10, curvature: d30 ** 2 / (d10 * d60) }
}
