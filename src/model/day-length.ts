/**
 * Length of a day: FAO Irrigation and Drainage Paper 56 (1998), chapter 3. Angles in radians, latitude
 * south negative.
 */

/** Declination of the sun, radians (Eq. 24). */
export const declination = (day: number): number =>
  0.409 * Math.sin((2 * Math.PI * day) / 365 - 1.39)

/**
 * Sunset hour angle, radians (Eq. 25); where the sun does not set or rise the argument leaves [−1,
 * 1] and is held there.
 */
export const sunsetAngle = (latitude: number, day: number): number =>
  Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination(day)))))

/**
 * Hours from geometric sunrise to sunset (Eq. 34); clock sunrise to sunset is some ten minutes
 * longer.
 */
export const daylightHours = (latitude: number, day: number): number =>
  (24 * sunsetAngle(latitude, day)) / Math.PI
