import { type Refusal, refuse } from '../calculation.ts'
import { positive } from './guards.ts'
import { dryDensity } from './phase-relations.ts'

/**
 * Work that a compaction test puts into each unit of volume.
 *
 *     E = hammer × drop × layers × blows ÷ mold
 *
 * @param hammer Weight of the hammer as a force, N, above 0.
 * @param drop m, above 0.
 * @param layers Whole, above 0.
 * @param blows On each layer, whole, above 0.
 * @param mold Volume of the mold, m³, above 0.
 * @returns J/m³, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see astm-d698, astm-d1557
 */
export const compactionEnergy = (
  hammer: number,
  drop: number,
  layers: number,
  blows: number,
  mold: number,
): number =>
  (positive('hammer', hammer) *
    positive('drop', drop) *
    positive('layers', layers) *
    positive('blows', blows)) /
  positive('mold', mold)

/** Weights (kg) and mold (m³) of one point of a compaction test. */
export type CompactionPoint = {
  readonly net: number
  readonly mold: number
  readonly wetAndCan: number
  readonly dryAndCan: number
  readonly can: number
}

/**
 * Moisture, wet and dry density (kg/m³) of one point of a compaction test.
 * @throws RangeError when the weights cannot be true.
 * @see astm-d1557
 */
export function compactionPoint({ net, mold, wetAndCan, dryAndCan, can }: CompactionPoint): {
  moisture: number
  wet: number
  dry: number
} {
  if (!(wetAndCan >= dryAndCan)) throw new RangeError('a sample cannot gain weight in the oven')
  const moisture = (wetAndCan - dryAndCan) / positive('dry sample', dryAndCan - can)
  const wet = positive('net weight', net) / positive('mold', mold)
  return { moisture, wet, dry: dryDensity(wet, moisture) }
}

/**
 * Dry density reached, as a share of the highest of a laboratory test. Above one it usually means
 * the wrong test. Say always which test: a share of the standard is not one of the modified.
 * @throws RangeError when an argument is out of range.
 * @see astm-d698, astm-d1557
 */
export const relativeCompaction = (dry: number, highest: number): number =>
  positive('dry density', dry) / positive('highest dry density', highest)

/**
 * Relative density of a clean sand: (emax − e) ÷ (emax − emin).
 * @returns A share; a refusal when the void ratio lies outside loosest and densest.
 * @throws RangeError unless the loosest void ratio is above the densest.
 */
export function relativeDensity(voids: number, densest: number, loosest: number): number | Refusal {
  const dr = (loosest - voids) / positive('span of void ratios', loosest - densest)
  return dr >= 0 && dr <= 1
    ? dr
    : refuse('the void ratio lies outside the loosest and the densest state')
}

/**
 * Void ratio at a relative density: emax − Dr (emax − emin). @throws RangeError unless the loosest
 * void ratio is above the densest.
 */
export const voidRatioAt = (dr: number, densest: number, loosest: number): number =>
  loosest - dr * positive('span of void ratios', loosest - densest)
