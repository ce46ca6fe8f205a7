import { notNegative, positive } from '../materials/guards.ts'
import { wholeUp } from '../whole-up.ts'

/** Parts of a truck's round trip, s. */
export type Trip = {
  readonly load: number
  readonly haul: number
  readonly dump: number
  readonly back: number
  readonly spot: number
}

/** Time, s, of one round trip. @throws RangeError when a part is below zero. @see fm-5-434 */
export const tripTime = (trip: Trip): number =>
  Object.entries(trip).reduce((sum, [part, time]) => sum + notNegative(part, time), 0)

/**
 * Driving time, s, over a way (m) at a speed (m/s). @throws RangeError when an argument is out of
 * range.
 */
export const drivingTime = (distance: number, speed: number): number =>
  notNegative('distance', distance) / positive('speed', speed)

/**
 * Trucks that keep one loader busy with none waiting: round trip ÷ loading time. With the fraction;
 * whole trucks are more where the loader must not wait, fewer where trucks must not.
 * @throws RangeError when an argument is out of range.
 */
export const trucksInBalance = (trip: number, load: number): number =>
  positive('round trip', trip) / positive('loading time', load)

/**
 * Whole trucks after the Army's rule, which counts one that stands ready: ⌈1 + round trip ÷ loading
 * time⌉. @throws RangeError when an argument is out of range. @see fm-5-434
 */
export const trucksWithSpare = (trip: number, load: number): number =>
  wholeUp(1 + trucksInBalance(trip, load))
