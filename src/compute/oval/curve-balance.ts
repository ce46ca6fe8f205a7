import { type Refusal, refuse } from '../calculation.ts'
import { positive } from '../materials/guards.ts'

/** Standard gravity, m/s², by definition. */
export const GRAVITY = 9.80665

/**
 * Share of its weight with which a body on a flat turn pushes outward: v² ÷ (r g). It is also the
 * slope that balances the turn, and the grip that a turn without slope asks for.
 * @param speed m/s, above 0.
 * @param radius Of the path, m, above 0.
 * @param gravity m/s².
 * @returns A share, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see openstax-physics
 */
export const sidePush = (speed: number, radius: number, gravity: number = GRAVITY): number =>
  positive('speed', speed) ** 2 / (positive('radius', radius) * positive('gravity', gravity))

/**
 * Speed, m/s, that a slope (rise over run) balances on a radius (m): √(g r e). @throws RangeError
 * when an argument is out of range. @see openstax-physics
 */
export const balancedSpeed = (slope: number, radius: number, gravity: number = GRAVITY): number =>
  Math.sqrt(positive('slope', slope) * positive('radius', radius) * positive('gravity', gravity))

/**
 * What slope leaves to the footing: v² ÷ (r g) − e.
 * @returns A share of the weight; a refusal when the slope more than balances the turn.
 * @throws RangeError when an argument is out of range.
 * @see aashto-green-book
 */
export function unbalancedPush(
  speed: number,
  radius: number,
  slope: number,
  gravity: number = GRAVITY,
): number | Refusal<'bank-outdoes-turn'> {
  const left = sidePush(speed, radius, gravity) - slope
  return left >= 0 ? left : refuse('bank-outdoes-turn')
}
