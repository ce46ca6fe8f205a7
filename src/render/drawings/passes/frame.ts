import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import type { Point } from '../ink.ts'
import { onPlan, type PlanFrame } from '../oval/frame.ts'

/** The oval with its width drawn `wider` times too large, so that strips have room for numbers. */
export type WideFrame = PlanFrame & { readonly wider: number }

type Room = {
  readonly width: number
  readonly side: number
  /** Least distance between the middles of two strips, points. */
  readonly pitch: number
  /** Least height of half the infield, points. */
  readonly infield: number
}

/**
 * Widened until every strip has its room, as far as the infield keeps its height.
 * @param step From the middle of one strip to that of the next where they lie closest, m.
 */
export function wideFrame(g: OvalGeometry, step: number, room: Room): WideFrame {
  const { width, side, pitch, infield } = room
  const scale = (wider: number): number =>
    (width - 2 * side) / (g.straight + 2 * (g.radius + g.widthTurns * wider))
  let wider = 2
  while (step * wider * scale(wider) < pitch && g.radius * scale(wider + 0.2) > infield)
    wider = Math.round((wider + 0.2) * 10) / 10
  const k = scale(wider)
  return { g, k, wider, middle: [width / 2, k * (g.radius + g.widthTurns * wider)] }
}

/** A point of the track. */
export const spot = (frame: WideFrame, station: number, offset: number): Point =>
  onPlan(frame, station, offset * frame.wider).at

/** A point so many drawn points outside a place on the track (inside where negative). */
export function beside(frame: WideFrame, station: number, offset: number, away: number): Point {
  const { at, out } = onPlan(frame, station, offset * frame.wider)
  return [at[0] + out[0] * away, at[1] + out[1] * away]
}

/** Direction of travel at a station, radians on the drawing. */
export function heading({ g, ...frame }: WideFrame, station: number): number {
  const { along } = onPlan({ g, ...frame }, station, 0)
  const way = g.direction === 'clockwise' ? 1 : -1
  return Math.atan2(way * along[1], way * along[0])
}

/** Points along the track between two stations, its distance from the rail by station. */
export function along(
  frame: WideFrame,
  from: number,
  to: number,
  offset: (station: number) => number,
): readonly Point[] {
  const count = Math.max(2, Math.ceil((to - from) / 6))
  return Array.from({ length: count + 1 }, (_, i) => {
    const station = from + ((to - from) * i) / count
    return spot(frame, station, offset(station))
  })
}
