import { roundTo } from '../model/quantity/format-quantity.ts'

/**
 * Rounds up to whole things: laps, loads, passes, barrows. A hair above a whole number, left over
 * from arithmetic, does not count.
 * @param x Any count, ≥ 0.
 * @returns The next whole number.
 * @example wholeUp(6.2) // 7
 */
export const wholeUp = (x: number): number => roundTo(x, { step: 1, mode: 'up' })
