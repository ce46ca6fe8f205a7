import { notNegative, positive } from '../materials/guards.ts'

/**
 * Time, s, for an amount at a rate (of it for each second). @throws RangeError when an argument is
 * out of range.
 */
export const jobTime = (amount: number, rate: number): number =>
  notNegative('amount', amount) / positive('rate', rate)

/**
 * Cost of an amount (hours, acres, tons …) at a price for each of its units. @throws RangeError
 * when an argument is out of range.
 */
export const costOf = (amount: number, price: number): number =>
  notNegative('amount', amount) * notNegative('price', price)

/**
 * Cost of one unit of what is made at a rate, where each second has its price. @throws RangeError
 * when an argument is out of range. @see fao-forestry-99
 */
export const unitCost = (price: number, rate: number): number =>
  notNegative('price', price) / positive('rate', rate)

/** Sum of costs. @throws RangeError when one is below zero. */
export const sumOfCosts = (costs: readonly number[]): number =>
  costs.reduce((sum, cost) => sum + notNegative('cost', cost), 0)

/**
 * Overhead on a subtotal, then administration or profit on the new total: the order matters.
 * @throws RangeError when an argument is out of range.
 */
export function markUp(
  subtotal: number,
  overhead: number,
  administration: number,
): { overhead: number; contract: number; administration: number; total: number } {
  const first = notNegative('subtotal', subtotal) * notNegative('overhead', overhead)
  const contract = subtotal + first
  const second = contract * notNegative('administration', administration)
  return { overhead: first, contract, administration: second, total: contract + second }
}
