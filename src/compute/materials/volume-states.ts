import { notNegative, positive } from './guards.ts'

/**
 * Loose volume of ground that is cut.
 *
 *     loose = bank × (1 + swell)
 *
 * @param bank Volume as it lay, m³, ≥ 0.
 * @param swell Share by which it swells, ≥ 0.
 * @returns m³, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see fm-5-434
 * @example looseFromBank(1000, 0.2) // 1200
 */
export const looseFromBank = (bank: number, swell: number): number =>
  notNegative('bank volume', bank) * (1 + notNegative('swell', swell))

/**
 * Bank volume, m³, of a loose one: loose ÷ (1 + swell). @throws RangeError when an argument is out
 * of range. @see fm-5-434
 */
export const bankFromLoose = (loose: number, swell: number): number =>
  notNegative('loose volume', loose) / (1 + notNegative('swell', swell))

/**
 * Bank volume that a compacted fill takes.
 *
 *     bank = compacted ÷ shrink factor
 *
 * @param compacted Volume of the finished fill, m³, ≥ 0.
 * @param factor Compacted volume per bank volume, above 0; one less the shrinkage, above 1 for
 * blasted rock.
 * @returns m³, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see fm-5-434
 * @example bankFromCompacted(10_000, 0.8) // 12_500
 */
export const bankFromCompacted = (compacted: number, factor: number): number =>
  notNegative('compacted volume', compacted) / positive('shrink factor', factor)

/**
 * Compacted volume, m³, that a bank volume makes: bank × shrink factor. @throws RangeError when an
 * argument is out of range. @see fm-5-434
 */
export const compactedFromBank = (bank: number, factor: number): number =>
  notNegative('bank volume', bank) * positive('shrink factor', factor)

/**
 * Share of its loose volume to which material packs down. Both factors are relative to bank volume,
 * so it is their quotient, not their sum.
 * @param swell Share by which bank swells when loose, ≥ 0.
 * @param factor Compacted volume per bank volume, above 0.
 * @throws RangeError when an argument is out of range.
 * @see fm-5-434
 */
export const looseToCompacted = (swell: number, factor: number): number =>
  positive('shrink factor', factor) / (1 + notNegative('swell', swell))

/**
 * Loose density, kg/m³, from bank density and swell. @throws RangeError when an argument is out of
 * range. @see fm-5-434
 */
export const looseDensity = (bankDensity: number, swell: number): number =>
  positive('bank density', bankDensity) / (1 + notNegative('swell', swell))
