import { positive } from '../materials/guards.ts'
import { wholeUp } from '../whole-up.ts'

/**
 * Pylons along the inside of an oval, set closer in the turns.
 * @param straight One straight, m, ≥ 0.
 * @param radius Turn radius at the pylons, m, above 0.
 * @param turnSpacing m, above 0.
 * @param straightSpacing m, above 0.
 * @returns Whole pylons.
 * @throws RangeError when an argument is out of range.
 * @see geometry
 */
export const pylonCount = (
  straight: number,
  radius: number,
  turnSpacing: number,
  straightSpacing: number,
): number =>
  wholeUp((2 * Math.PI * positive('radius', radius)) / positive('spacing in turns', turnSpacing)) +
  wholeUp((2 * straight) / positive('spacing on straights', straightSpacing))
