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

/** Curve number of several areas together, weighted by area and rounded to a whole number. */
export const weightedCurveNumber = (numbers: readonly number[], areas: readonly number[]): number =>
  Math.round(weightedMean(numbers, areas))

/** Mean weighted by area, for runoff coefficients. */
export function weightedMean(values: readonly number[], areas: readonly number[]): number {
  const total = areas.reduce((a, b) => a + b, 0)
  return values.reduce((sum, v, i) => sum + v * (areas[i] ?? 0), 0) / total
}

/**
 * Peak flow, ft³/s, of the rational method: coefficient × in/h × acres (FHWA HEC-22); the factor
 * 1.008 is taken as 1.
 */
export const rationalFlow = (coefficient: number, inchesPerHour: number, acres: number): number =>
  coefficient * inchesPerHour * acres

/**
 * Travel time of sheet flow, h (Eq. 3-3): roughness, length ft, two-year 24-hour rain in, slope
 * ft/ft.
 */
export const sheetFlowTime = (
  roughness: number,
  length: number,
  rain: number,
  slope: number,
): number => (0.007 * (roughness * length) ** 0.8) / (rain ** 0.5 * slope ** 0.4)

/** Travel time, h, over a length in feet at a velocity in ft/s (Eq. 3-1). */
export const travelTime = (length: number, velocity: number): number => length / (3600 * velocity)

/** Velocity of shallow flow over bare ground, ft/s (Appendix F), for a slope in ft/ft. */
export const shallowVelocity = (slope: number): number => 16.1345 * Math.sqrt(slope)

/** Velocity in a channel, ft/s (Eq. 3-4, Manning): roughness, hydraulic radius ft, slope ft/ft. */
export const channelVelocity = (roughness: number, radius: number, slope: number): number =>
  (1.49 / roughness) * radius ** (2 / 3) * slope ** 0.5
