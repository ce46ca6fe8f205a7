import { notNegative, positive } from '../materials/guards.ts'

/**
 * Share of a price to be set aside each year so that it is paid back with interest.
 *
 *     CRF = i ÷ (1 − (1 + i)^−n)
 *
 * @param interest Yearly, ≥ 0; without interest it is one part in n.
 * @param years Above 0.
 * @throws RangeError when an argument is out of range.
 * @see isu-a3-29
 */
export const recoveryFactor = (interest: number, years: number): number =>
  notNegative('interest', interest) === 0
    ? 1 / positive('years', years)
    : interest / (1 - (1 + interest) ** -positive('years', years))

/**
 * Depreciation and interest, money a year: (price − salvage) CRF + salvage × i. @throws RangeError
 * when an argument is out of range. @see isu-a3-29
 */
export const capitalRecovery = (
  price: number,
  salvage: number,
  interest: number,
  years: number,
): number =>
  notNegative('loss of value', price - notNegative('salvage', salvage)) *
    recoveryFactor(interest, years) +
  salvage * interest

/**
 * Taxes, insurance and housing, money a year: rate × mean of price and salvage. @throws RangeError
 * when an argument is out of range. @see isu-a3-29
 */
export const housingCost = (price: number, salvage: number, rate: number): number =>
  (notNegative('rate', rate) * (notNegative('price', price) + notNegative('salvage', salvage))) / 2

/**
 * What is left of a list price. @param left Share, ≥ 0. @throws RangeError when an argument is out
 * of range. @see isu-a3-29
 */
export const salvageValue = (listPrice: number, left: number): number =>
  notNegative('list price', listPrice) * notNegative('share left', left)

/**
 * Repairs up to an age, as a share of the list price.
 *
 *     RF1 × (h ÷ 1000)^RF2
 *
 * @param hours Worked so far, s, ≥ 0.
 * @param rf1 @param rf2 Coefficients of the kind of machine; 0.007 and 2.0 for a two-wheel-drive
 * tractor.
 * @throws RangeError when an argument is out of range.
 * @see isu-pm-710
 */
export const repairShare = (hours: number, rf1: number, rf2: number): number =>
  positive('RF1', rf1) * (notNegative('hours', hours) / 3_600_000) ** positive('RF2', rf2)
