import { positive, share } from '../materials/guards.ts'

/**
 * Area that an implement covers in a unit of time.
 *
 *     rate = speed × width × efficiency
 *
 * @param speed m/s, above 0.
 * @param width Working width less overlap, m, above 0.
 * @param efficiency Share of the time that it really works, 0 to 1; 1 gives the theoretical rate.
 * @returns m²/s, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see isu-pm-696
 * @example fieldCapacity(2.68224, 12.192, 0.7) // 22.9 m²/s: 40 ft at 6 mph covers 20.4 acres an
 * hour
 */
export const fieldCapacity = (speed: number, width: number, efficiency: number): number =>
  positive('speed', speed) * positive('width', width) * share('efficiency', efficiency)
