import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { foot, inch } from '../../model/quantity/units.ts'
import { readingRatios } from './letter-height.ts'

/**
 * Height of capitals over type size, for the humanist sans of the sheets (Source Sans: 660 of 1000
 * units).
 */
const sheetCapitals = 0.66

const metersPerPoint = inch / 72

/**
 * How far posted type can be read in good light.
 *
 *     distance = 300 × capital height
 *
 * @param points Type size, points, > 0.
 * @param capitals Height of capitals over type size; that of the sheets' own face where it is left
 * out.
 * @returns Distance in meters, not rounded.
 * @throws RangeError when the size is not a positive number.
 */
export function readingDistance(points: number, capitals: number = sheetCapitals): number {
  if (!(points > 0 && points < Infinity))
    throw new RangeError('readingDistance requires a positive type size')
  return readingRatios.message * points * capitals * metersPerPoint
}

/**
 * That distance as printed: whole feet or tenths of a meter, rounded down, since nobody reads
 * further than they can.
 */
export function readingDistanceWords(points: number, system: UnitSystem): string {
  const meters = readingDistance(points)
  return system === 'us' ? `${Math.floor(meters / foot)} ft` : `${Math.floor(meters * 10) / 10} m`
}
