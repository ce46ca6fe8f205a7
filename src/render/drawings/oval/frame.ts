import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import type { Point } from '../ink.ts'
import { onOval, widthAt } from './shape.ts'

/** Where the oval lies on the drawing: `k` points a meter around its middle. */
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

/** The fence outside the track, around the oval. */
export const fenceOnPlan = (frame: PlanFrame): readonly Point[] => {
  const steps = 320
  return Array.from({ length: steps + 1 }, (_, i) => {
    const station = (frame.g.railLength * i) / steps
    return onPlan(frame, station, widthAt(frame.g, station)).at
  })
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
