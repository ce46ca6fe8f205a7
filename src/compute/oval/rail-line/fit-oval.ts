import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import type { PlanePoint } from '../../../model/geodesy.ts'
import { rememberOf } from '../../../model/remembered.ts'

/**
 * Two straights and two half circles laid through points; meters, heading of the straights in
 * radians from east.
 */
export type FittedOval = {
  readonly straight: number
  readonly radius: number
  readonly heading: number
  readonly center: PlanePoint /** Mean and largest distance of the points from it. */
  readonly mean: number
  readonly worst: number
}

type Parameters = readonly [x: number, y: number, heading: number, straight: number, radius: number]

/**
 * Signed distance of a point from an oval, m: above zero outside it. The oval is all points
 * `radius` from its middle line.
 */
export function distanceFromOval(
  [px, py]: PlanePoint,
  [x, y, heading, straight, radius]: Parameters,
): number {
  const [cos, sin] = [Math.cos(heading), Math.sin(heading)]
  const along = (px - x) * cos + (py - y) * sin
  const across = (py - y) * cos - (px - x) * sin
  const past = Math.max(0, Math.abs(along) - straight / 2)
  return Math.hypot(past, across) - radius
}

/** Direction in which points spread most: the first principal axis. */
function mainDirection(points: readonly PlanePoint[], [x, y]: PlanePoint): number {
  const sums = points.reduce(
    (s, [px, py]) => ({
      xx: s.xx + (px - x) ** 2,
      yy: s.yy + (py - y) ** 2,
      xy: s.xy + (px - x) * (py - y),
    }),
    { xx: 0, yy: 0, xy: 0 },
  )
  return Math.atan2(2 * sums.xy, sums.xx - sums.yy) / 2
}

function firstGuess(points: readonly PlanePoint[]): Parameters {
  const n = points.length
  const center: PlanePoint = [
    points.reduce((s, p) => s + p[0], 0) / n,
    points.reduce((s, p) => s + p[1], 0) / n,
  ]
  const heading = mainDirection(points, center)
  const [cos, sin] = [Math.cos(heading), Math.sin(heading)]
  const along = points.map(([x, y]) => (x - center[0]) * cos + (y - center[1]) * sin)
  const across = points.map(([x, y]) => (y - center[1]) * cos - (x - center[0]) * sin)
  const extent = (v: readonly number[]): number => Math.max(...v) - Math.min(...v)
  const radius = extent(across) / 2
  const [dx, dy] = [
    (Math.max(...along) + Math.min(...along)) / 2,
    (Math.max(...across) + Math.min(...across)) / 2,
  ]
  return [
    center[0] + dx * cos - dy * sin,
    center[1] + dx * sin + dy * cos,
    heading,
    Math.max(1, extent(along) - 2 * radius),
    radius,
  ]
}

/** An oval as text, from which its numbers come back as they were, whatever they are. */
const asText = ({ straight, radius, heading, center, mean, worst }: FittedOval): string =>
  [straight, radius, heading, ...center, mean, worst].map(String).join(' ')

function fromText(text: string): FittedOval {
  const [straight = 0, radius = 0, heading = 0, cx = 0, cy = 0, mean = 0, worst = 0] = text
    .split(' ')
    .map(Number)
  return { straight, radius, heading, center: [cx, cy], mean, worst }
}

/** Fitting takes long, and the same line has the same oval. */
const fitted = rememberOf('ovals', (points) => asText(leastSquares(JSON.parse(points))))

/**
 * Lays an oval through a closed line of points by least squares of their distances from it.
 * @param points In order around the line, evenly enough that both straights and both turns have
 * several.
 */
export const fitOval = (points: readonly PlanePoint[]): FittedOval =>
  fromText(fitted(JSON.stringify(points)))

function leastSquares(points: readonly PlanePoint[]): FittedOval {
  const x = points.map((_, i) => i)
  const y = points.map(() => 0)
  const off =
    (parameters: readonly number[]) =>
    (i: number): number =>
      distanceFromOval(points[i] ?? [0, 0], parameters as unknown as Parameters)
  const { parameterValues } = levenbergMarquardt({ x, y }, off, {
    initialValues: [...firstGuess(points)],
    damping: 1e-3,
    gradientDifference: 1e-5,
    centralDifference: true,
    maxIterations: 200,
    errorTolerance: 1e-12,
    improvementThreshold: 1e-9,
  })
  const [cx = 0, cy = 0, heading = 0, straight = 0, radius = 0] = parameterValues
  const distances = points.map((_, i) => Math.abs(off(parameterValues)(i)))
  return {
    straight,
    radius,
    heading,
    center: [cx, cy],
    mean: distances.reduce((a, b) => a + b, 0) / distances.length,
    worst: Math.max(...distances),
  }
}
