import { positive } from '../materials/guards.ts'

/** One operation of a grader: passes over a way (m, each pass) at a speed (m/s). */
export type Operation = {
  readonly passes: number
  readonly distance: number
  readonly speed: number
}

/**
 * Time of a job with a grader. Each operation has its own speed, and their times are added: speeds
 * must not be averaged.
 *
 *     t = Σ P D ÷ (S E)
 *
 * @param efficiency Time and skill, above 0.
 * @returns s, not rounded.
 * @throws RangeError when an argument is out of range.
 * @see navedtra-14081
 */
export const graderTime = (operations: readonly Operation[], efficiency: number): number =>
  operations.reduce(
    (sum, { passes, distance, speed }) =>
      sum +
      (positive('passes', passes) * positive('distance', distance)) /
        (positive('speed', speed) * positive('efficiency', efficiency)),
    0,
  )

/**
 * Speed at which passes of different speeds would take the time that they take: the harmonic mean.
 * @throws RangeError for no speeds. @see geometry
 */
export function meanPassSpeed(speeds: readonly number[]): number {
  const times = speeds.reduce((sum, v) => sum + 1 / positive('speed', v), 0)
  return positive('number of passes', speeds.length) / times
}
