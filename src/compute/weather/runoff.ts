/**
 * Rain that runs off: NRCS Technical Release 55 (1986). Depths in inches, as its equations are
 * written.
 */

/** Greatest retention, in (Eq. 2-4), for a curve number from 1 to 100. */
export const retention = (curveNumber: number): number => 1000 / curveNumber - 10

/**
 * Runoff, in, of a rain (Eqs. 2-1 to 2-3); none until the first losses are met, where the bare
 * formula would give some.
 */
export function runoffDepth(rain: number, s: number): number {
  const first = 0.2 * s
  return rain <= first ? 0 : (rain - first) ** 2 / (rain - first + s)
}
