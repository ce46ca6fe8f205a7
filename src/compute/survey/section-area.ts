import { notNegative } from '../materials/guards.ts'

/**
 * Area of a cut with a flat floor and even sides.
 *
 *     A = d (b + s d)
 *
 * @param base Width of the floor, m, ≥ 0.
 * @param sideSlope Level run of a side for each unit of height, ≥ 0; 0 for upright sides.
 * @param depth m, ≥ 0.
 * @returns m², not rounded.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 */
export const levelSection = (base: number, sideSlope: number, depth: number): number =>
  notNegative('depth', depth) *
  (notNegative('base', base) + notNegative('side slope', sideSlope) * depth)

/**
 * Area, m², of a washout seen as a V: half of width by depth. @throws RangeError when an argument
 * is out of range. @see geometry
 */
export const veeSection = (width: number, depth: number): number =>
  0.5 * notNegative('width', width) * notNegative('depth', depth)

/**
 * Area of a figure by the coordinates of its corners, taken in order around it.
 *
 *     A = ½ |Σ x_i (y_{i+1} − y_{i−1})|
 *
 * @param corners At least three, m.
 * @returns m², not rounded.
 * @throws RangeError with fewer than three corners.
 * @see geometry
 */
export function coordinateArea(corners: readonly (readonly [number, number])[]): number {
  if (corners.length < 3) throw new RangeError('a figure has at least three corners')
  const sum = corners.reduce((total, [x], i) => {
    const next = corners[(i + 1) % corners.length] ?? [0, 0]
    const last = corners[(i + corners.length - 1) % corners.length] ?? [0, 0]
    return total + x * (next[1] - last[1])
  }, 0)
  return Math.abs(sum) / 2
}
