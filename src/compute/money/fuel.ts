import { positive } from '../materials/guards.ts'

/**
 * Diesel that a tractor uses in the mean of a year: 0.044 gal an hour for each horsepower of its
 * take-off, in SI
 * 6.2 × 10⁻¹¹ m³/s for each watt. Heavy field work takes more.
 * @see asae-ep496
 */
export const YEARLY_MEAN = (0.044 * 0.003785411784) / 3600 / 745.6998715822702

/**
 * Fuel, m³/s, of a power (W) at a use for each watt (m³/J). @throws RangeError when an argument is
 * out of range. @see asae-ep496
 */
export const fuelUse = (power: number, each: number = YEARLY_MEAN): number =>
  positive('power', power) * positive('use', each)
