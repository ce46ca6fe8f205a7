import { type Refusal, refuse } from '../calculation.ts'
import { notNegative, positive, share } from './guards.ts'

/**
 * Densities here are mass per volume, kg/m³; unit weights in any one unit work the same way, as
 * long as that of water is given in it too. Moisture is by dry mass.
 * @see ufc-3-220-10n
 */

/** Dry density from wet: wet ÷ (1 + w). @throws RangeError when an argument is out of range. */
export const dryDensity = (wet: number, moisture: number): number =>
  positive('wet density', wet) / (1 + notNegative('moisture', moisture))

/**
 * Void ratio.
 *
 *     e = Gs × water ÷ dry − 1
 *
 * @param dry Dry density, above 0.
 * @param gravity Specific gravity of the grains, above 0; mostly 2.60 to 2.80.
 * @param water Density of water in the same unit.
 * @returns Volume of voids per volume of grains; a refusal when the density is above that of the
 * grains.
 * @throws RangeError when an argument is out of range.
 */
export function voidRatio(dry: number, gravity: number, water: number): number | Refusal {
  const e =
    (positive('specific gravity', gravity) * positive('density of water', water)) /
      positive('dry density', dry) -
    1
  return e > 0 ? e : refuse('no soil is as dense as its own grains')
}

/** Porosity from void ratio: e ÷ (1 + e). @throws RangeError when an argument is out of range. */
export const porosity = (voids: number): number => positive('void ratio', voids) / (1 + voids)

/**
 * Void ratio from porosity: n ÷ (1 − n). @throws RangeError unless porosity lies between 0 and 1.
 */
export const voidRatioFromPorosity = (n: number): number =>
  positive('porosity', n) / positive('one less porosity', 1 - n)

/**
 * Share of the voids that water fills: w Gs ÷ e.
 * @returns A share; a refusal when there is more water than room for it.
 * @throws RangeError when an argument is out of range.
 */
export function saturation(moisture: number, gravity: number, voids: number): number | Refusal {
  const filled =
    (notNegative('moisture', moisture) * positive('specific gravity', gravity)) /
    positive('void ratio', voids)
  return filled <= 1 + 1e-9 ? filled : refuse('there is more water than the voids can hold')
}

/**
 * Density with a share of the voids full: (Gs + S e) × water ÷ (1 + e). @throws RangeError when an
 * argument is out of range.
 */
export const bulkDensity = (
  gravity: number,
  filled: number,
  voids: number,
  water: number,
): number =>
  ((positive('specific gravity', gravity) + share('saturation', filled) * voids) *
    positive('density of water', water)) /
  (1 + positive('void ratio', voids))

/**
 * Void ratio of a saturated soil from its density: (Gs water − bulk) ÷ (bulk − water). @throws
 * RangeError when an argument is out of range.
 */
export const saturatedVoidRatio = (bulk: number, gravity: number, water: number): number =>
  positive('grains above bulk', gravity * water - bulk) / positive('bulk above water', bulk - water)

/**
 * Highest dry density at a moisture, with no air left: Gs water ÷ (1 + w Gs). @throws RangeError
 * when an argument is out of range.
 */
export const zeroAirVoids = (gravity: number, moisture: number, water: number): number =>
  (positive('specific gravity', gravity) * positive('density of water', water)) /
  (1 + notNegative('moisture', moisture) * gravity)

/**
 * Moisture by dry mass from moisture by volume, which is what a probe reads.
 *
 *     w = volumetric × water ÷ dry
 *
 * @throws RangeError when an argument is out of range.
 */
export const moistureFromProbe = (volumetric: number, dry: number, water: number): number =>
  (share('moisture by volume', volumetric) * positive('density of water', water)) /
  positive('dry density', dry)
