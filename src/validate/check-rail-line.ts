import { closedLine, distanceBetween, localPlane, type PlanePoint } from '../model/geodesy.ts'
import type { Place, Problem, Result } from '../model/problem.ts'
import type { RailPoint } from '../model/rail-line.ts'
import { problemAt, type SourceFile } from '../read/source-file.ts'

/**
 * A walked line of the rail that has passed every check; not closed: the last point is not the
 * first again.
 */
export type RailLine = {
  readonly points: readonly RailPoint[]
  readonly date: string
  readonly by: string
  readonly at: Place
}

const fewest = 16
/** Shortest and longest rail that anything here is made for, m. */
const lengths = [300, 4000] as const
/**
 * Farther than this from the place in the facility file, m, it is another oval, or latitude and
 * longitude have changed places.
 */
const farthest = 20_000

const turn = (a: PlanePoint, b: PlanePoint, c: PlanePoint): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
const crosses = (a: PlanePoint, b: PlanePoint, c: PlanePoint, d: PlanePoint): boolean =>
  turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0

/** The first leg that crosses another one; a line around an oval crosses itself nowhere. */
function firstCrossing(points: readonly PlanePoint[]): number | undefined {
  const n = points.length
  const at = (i: number): PlanePoint => points[i % n] as PlanePoint
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++)
      if (!(i === 0 && j === n - 1) && crosses(at(i), at(i + 1), at(j), at(j + 1))) return j
  return undefined
}

/**
 * Receivers repeat points where somebody stands still; the end of a closed line repeats its start.
 */
function withoutRepeats(points: readonly RailPoint[]): readonly RailPoint[] {
  return points.filter((p, i) => {
    const before = points[i - 1] ?? points.at(-1)
    return !before || points.length === 1 || distanceBetween(p, before) > 0.05
  })
}

/**
 * Checks a walked line: enough points, on the earth, near the facility, once around, without jumps
 * and crossings.
 */
export function checkRailLine(
  all: readonly RailPoint[],
  file: SourceFile,
  place: { readonly latitude?: number | undefined; readonly longitude?: number | undefined },
): Result<readonly RailPoint[]> {
  const fail = (at: Place, code: Problem['code'], message: string, hint: string): Problem =>
    problemAt(file, at, code, message, { hint })
  const off = all.filter((p) => Math.abs(p.latitude) > 90 || Math.abs(p.longitude) > 180)
  if (off.length > 0)
    return {
      value: undefined,
      problems: off.map((p) =>
        fail(
          p.place,
          'quantity/range',
          `${p.latitude}, ${p.longitude} is nowhere on the earth`,
          'latitude from -90 to 90, longitude from -180 to 180',
        ),
      ),
    }
  const points = withoutRepeats(all)
  const first = points[0]
  if (!first || points.length < fewest)
    return {
      value: undefined,
      problems: [
        fail(
          first?.place ?? { file: file.path, line: 1, column: 1, length: 1 },
          'file/format',
          `${points.length} points are too few for an oval`,
          `walk once around and note at least ${fewest}, several on each turn`,
        ),
      ],
    }
  const { latitude, longitude } = place
  if (
    latitude !== undefined &&
    longitude !== undefined &&
    distanceBetween(first, { latitude, longitude }) > farthest
  ) {
    return {
      value: undefined,
      problems: [
        fail(
          first.place,
          'quantity/range',
          'the line lies far from the place in the facility file',
          'have latitude and longitude changed places? GeoJSON writes longitude first',
        ),
      ],
    }
  }
  const { length } = closedLine(points)
  if (length < lengths[0] || length > lengths[1])
    return {
      value: undefined,
      problems: [
        fail(
          first.place,
          'oval/impossible',
          `the closed line is ${Math.round(length)} m long`,
          `once around the rail of an oval is from ${lengths[0]} to ${lengths[1]} m`,
        ),
      ],
    }
  const jumps = points.filter(
    (p, i) => distanceBetween(p, points[i - 1] ?? (points.at(-1) as RailPoint)) > length / 4,
  )
  if (jumps.length > 0)
    return {
      value: undefined,
      problems: jumps.map((p) =>
        fail(
          p.place,
          'oval/impossible',
          'the line jumps to here over a quarter of the oval',
          'points are missing, or stand in the wrong order',
        ),
      ),
    }
  const crossing = firstCrossing(localPlane(points))
  if (crossing !== undefined)
    return {
      value: undefined,
      problems: [
        fail(
          (points[crossing] as RailPoint).place,
          'oval/impossible',
          'the line crosses itself here',
          'walk once around, and leave out the way to and from the rail',
        ),
      ],
    }
  return { value: points, problems: [] }
}
