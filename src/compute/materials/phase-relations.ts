import { notNegative, positive } from './guards.ts'

/**
 * Dry density from wet: wet ÷ (1 + w).
 * @param wet Mass per volume, kg/m³, or a unit weight in any unit; the answer is in the same.
 * @param moisture By dry mass, ≥ 0.
 * @throws RangeError when an argument is out of range.
 * @see ufc-3-220-10n
 */
export const dryDensity = (wet: number, moisture: number): number =>
  positive('wet density', wet) / (1 + notNegative('moisture', moisture))
