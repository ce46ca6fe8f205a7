import type { OvalGeometry } from '../../model/manual.ts'
import { foot } from '../../model/quantity/units.ts'
import { onOval } from './oval-shape.ts'
import type { Point } from './svg.ts'

/** Where the oval lies on the drawing: `k` pixels a meter around its middle. */
export type PlanFrame = { readonly g: OvalGeometry; readonly k: number; readonly middle: Point }

/** A point of the oval on the drawing, with the directions outward and along the track. */
export function onPlan(
  { g, k, middle }: PlanFrame,
  station: number,
  offset: number,
): { readonly at: Point; readonly out: Point; readonly along: Point } {
  const { point, out } = onOval(g, station, offset)
  return { at: [middle[0] + k * point[0], middle[1] + k * point[1]], out, along: [-out[1], out[0]] }
}

/** Points around the oval at a distance from the rail, m. */
export const aroundPlan = (
  frame: PlanFrame,
  offset: number,
  from = 0,
  length = frame.g.railLength,
  steps = 160,
): readonly Point[] =>
  Array.from({ length: steps + 1 }, (_, i) => onPlan(frame, from + (length * i) / steps, offset).at)

/** Straights and turns in the order in which horses run them. */
export const zoneNames = ['homeStraight', 'firstTurn', 'backStraight', 'lastTurn'] as const

/** Where each begins and ends, meters along the rail. */
export function zones(g: OvalGeometry): readonly {
  readonly name: (typeof zoneNames)[number]
  readonly from: number
  readonly to: number
}[] {
  const arc = Math.PI * g.radius
  const ends = [0, g.straight, g.straight + arc, 2 * g.straight + arc, g.railLength]
  return zoneNames.map((name, i) => ({ name, from: ends[i] ?? 0, to: ends[i + 1] ?? 0 }))
}

/** Stations as people say them: feet or meters, to the nearest. */
export const stationText = (meters: number, us: boolean): string =>
  `${new Intl.NumberFormat('en-US').format(Math.round(us ? meters / foot : meters))} ${us ? 'ft' : 'm'}`
