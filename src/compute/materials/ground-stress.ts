import { notNegative, positive } from './guards.ts'

/**
 * Vertical stress in even, elastic ground under loads on its surface. Signs are positive for
 * pressing; nearer to the surface than three times the radius of a load, use a circle, not a point.
 * @see ufc-3-220-10n
 */

/**
 * Influence of a point load at a depth, by how far aside it lies for each unit of depth: 0.4775
 * straight below.
 */
export const pointInfluence = (aside: number): number =>
  (3 / (2 * Math.PI)) * (1 + notNegative('distance aside', aside) ** 2) ** -2.5

/**
 * Stress under a point load.
 *
 *     σ = P ÷ z² × 3 ÷ 2π × (1 + (r ÷ z)²)^−2.5
 *
 * @param load N, ≥ 0.
 * @param depth m, above 0.
 * @param aside Horizontal distance, m, ≥ 0.
 * @returns Pa, not rounded.
 * @throws RangeError when an argument is out of range.
 */
export const pointStress = (load: number, depth: number, aside: number): number =>
  (notNegative('load', load) / positive('depth', depth) ** 2) * pointInfluence(aside / depth)

/**
 * Point load, N, that gives a stress (Pa) at a depth and a distance aside (m). @throws RangeError
 * when an argument is out of range.
 */
export const pointLoadFor = (stress: number, depth: number, aside: number): number =>
  (notNegative('stress', stress) * positive('depth', depth) ** 2) / pointInfluence(aside / depth)

/**
 * Stress, Pa, under the middle of a circle of even pressure (Pa), radius and depth in m. @throws
 * RangeError when an argument is out of range.
 */
export const circleStress = (pressure: number, radius: number, depth: number): number =>
  notNegative('pressure', pressure) *
  (1 - (1 + (positive('radius', radius) / positive('depth', depth)) ** 2) ** -1.5)

/**
 * Stress, Pa, under the corner of a rectangle of even pressure (Pa), sides and depth in m. @throws
 * RangeError when an argument is out of range.
 */
export function cornerStress(
  pressure: number,
  length: number,
  width: number,
  depth: number,
): number {
  const m = positive('width', width) / positive('depth', depth)
  const n = positive('length', length) / depth
  const v = m ** 2 + n ** 2 + 1
  const root = Math.sqrt(v)
  const first = ((2 * m * n * root) / (v + m ** 2 * n ** 2)) * ((v + 1) / v)
  // The angle lies in the second quadrant for large loads near the surface; atan2 follows it there.
  const angle = Math.atan2(2 * m * n * root, v - m ** 2 * n ** 2)
  return (notNegative('pressure', pressure) * (first + angle)) / (4 * Math.PI)
}

/** Contact of a tire on firm ground: area (m²) and the radius (m) of a circle as large. */
export type TireContact = { readonly area: number; readonly radius: number }

/**
 * Contact of a tire that carries a load (N) at an inflation pressure (Pa). @throws RangeError when
 * an argument is out of range.
 */
export function tireContact(load: number, pressure: number): TireContact {
  const area = notNegative('load', load) / positive('pressure', pressure)
  return { area, radius: Math.sqrt(area / Math.PI) }
}
