import { positive } from './guards.ts'

/**
 * Dry density reached, as a share of the highest of a laboratory test. Above one it usually means
 * the wrong test. Say always which test: a share of the standard is not one of the modified.
 * @throws RangeError when an argument is out of range.
 * @see astm-d698, astm-d1557
 */
export const relativeCompaction = (dry: number, highest: number): number =>
  positive('dry density', dry) / positive('highest dry density', highest)
