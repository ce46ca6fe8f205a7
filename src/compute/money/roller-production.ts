import { positive, share } from '../materials/guards.ts'
import { wholeUp } from '../whole-up.ts'

/**
 * A roller at work, in m and m/s: width less overlap, working speed, share of the time at work,
 * passes over a strip.
 */
export type Roller = {
  readonly width: number
  readonly speed: number
  readonly efficiency: number
  readonly passes: number
}

/**
 * Area, m²/s, that a roller finishes: W S E ÷ P. @throws RangeError when an argument is out of
 * range. @see fm-5-434
 */
export const rollerArea = ({ width, speed, efficiency, passes }: Roller): number =>
  (positive('width', width) * positive('speed', speed) * share('efficiency', efficiency)) /
  positive('passes', passes)

/**
 * Compacted volume that a roller finishes.
 *
 *     Q = W S L E ÷ P
 *
 * In yards, miles and inches the constant is 5280 ÷ (12 × 27) = 16.3; in SI there is none.
 * @param lift Thickness after compaction, m, above 0.
 * @returns m³/s, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see fm-5-434
 */
export const rollerVolume = (roller: Roller, lift: number): number =>
  rollerArea(roller) * positive('lift', lift)

/**
 * Rollers that keep up with loose material as it arrives.
 * @param arriving Loose volume, m³/s, above 0.
 * @param packs Compacted volume for each loose volume, 0 to 1.
 * @param each Compacted volume that one roller finishes, m³/s, above 0.
 * @returns As a number with its fraction, and whole.
 * @throws RangeError when an argument is out of range.
 * @see fm-5-434
 */
export function rollersNeeded(
  arriving: number,
  packs: number,
  each: number,
): { exact: number; whole: number } {
  const exact =
    (positive('arriving', arriving) * share('packs', packs)) / positive('production', each)
  return { exact, whole: wholeUp(exact) }
}
