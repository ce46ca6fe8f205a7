import type { Place } from './problem.ts'

/** A point of a walked rail, degrees on WGS84, north and east positive. */
export type RailPoint = {
  readonly latitude: number
  readonly longitude: number
  readonly place: Place
}
