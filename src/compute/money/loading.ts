import { positive, share } from '../materials/guards.ts'

/**
 * Loose volume that a loader moves.
 *
 *     Q = bucket × fill ÷ cycle × share of the hour
 *
 * @param bucket Heaped, m³, above 0.
 * @param fill Share of the bucket that is filled, above 0; may be above one in moist loam.
 * @param cycle s, above 0.
 * @param working Share of the hour at work, 0 to 1: 50 min of 60, or less still.
 * @returns m³/s, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see fm-5-434
 */
export const loadingRate = (bucket: number, fill: number, cycle: number, working: number): number =>
  ((positive('bucket', bucket) * positive('fill', fill)) / positive('cycle', cycle)) *
  share('working share', working)

/**
 * Rate of anything that goes in whole loads: load ÷ cycle × share of the hour. @throws RangeError
 * when an argument is out of range. @see fm-5-434
 */
export const loadRate = (load: number, cycle: number, working: number): number =>
  loadingRate(load, 1, cycle, working)
