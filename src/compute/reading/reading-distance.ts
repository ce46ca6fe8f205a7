import { readingRatios } from '../safety/letter-height.ts'

/** Height of capitals over type size, for the humanist sans of the sheets (Source Sans: 660 of 1000 units). */
const capitalRatio = 0.66

const metersPerPoint = 0.0254 / 72

/**
 * How far posted type can be read in good light.
 *
 *     distance = 300 × capital height
 *
 * @param points Type size, points, > 0.
 * @returns Distance in meters, not rounded.
 * @throws RangeError when the size is not a positive number.
 */
export function readingDistance(points: number): number {
  if (!(points > 0 && points < Infinity)) throw new RangeError('readingDistance requires a positive type size')
  return readingRatios.message * points * capitalRatio * metersPerPoint
}
