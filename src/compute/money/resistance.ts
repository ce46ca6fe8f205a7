import { inch } from '../../model/quantity/units.ts'
import { notNegative } from '../materials/guards.ts'

/**
 * Pull, N, that moves a weight (N) against rolling and grade, both as shares of it; downhill is
 * below zero. @throws RangeError for a weight below zero.
 */
export const haulPull = (weight: number, rolling: number, grade: number): number =>
  notNegative('weight', weight) * (notNegative('rolling resistance', rolling) + grade)

/**
 * Rolling resistance of tires that sink in, as a share of the weight: 2 % on a hard road, and 1.5 %
 * for each inch.
 *
 *     lb per ton = 40 + 30 × inches
 *
 * @param penetration How deep tires sink in, m, ≥ 0.
 * @throws RangeError for a depth below zero.
 * @see common-practice
 */
export const rollingShare = (penetration: number): number =>
  (40 + 30 * (notNegative('penetration', penetration) / inch)) / 2000
