import * as z from 'zod'
import { closedLine, distanceBetween, localPlane, type PlanePoint } from '../../model/geodesy.ts'
import type { Place, Problem, Result } from '../../model/problem.ts'
import type { RailPoint } from '../../model/rail-line.ts'
import { readGeoJson } from '../../read/rail-line/read-geojson.ts'
import { readGpx } from '../../read/rail-line/read-gpx.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import { quantity } from '../schemas/quantity.ts'
import { date, isDevice, line, noFile } from '../schemas/text.ts'
import type { Import } from './import.ts'

/**
 * The entry of the facility file: the line of the rail as walked or surveyed, once around, as GPX
 * 1.1 or GeoJSON (RFC 7946) in the facility folder.
 */
const railLineEntry = z.strictObject({
  file: z
    .string()
    .regex(/^[\w.-]+\.(gpx|geojson|json)$/i, {
      error: 'the name of a GPX or GeoJSON file in this folder, such as rail.gpx',
    })
    .refine((name) => !isDevice(name), { error: noFile }),
  date,
  by: line,
  offset: quantity('oval.rail-line.offset'),
})

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

/** What is wrong with a line, and with which of its points. */
type Fault = {
  readonly points: readonly RailPoint[]
  readonly code: Problem['code']
  readonly message: (point: RailPoint) => string
  readonly hint: string
}

/** Where the facility says that it lies, degrees. */
type Where = { readonly latitude?: number | undefined; readonly longitude?: number | undefined }

const offEarth = (points: readonly RailPoint[]): Fault => ({
  points: points.filter((p) => Math.abs(p.latitude) > 90 || Math.abs(p.longitude) > 180),
  code: 'quantity/range',
  message: (p) => `${p.latitude}, ${p.longitude} is nowhere on the earth`,
  hint: 'latitude from -90 to 90, longitude from -180 to 180',
})

const farAway = (points: readonly RailPoint[], { latitude, longitude }: Where): Fault => ({
  points: points
    .slice(0, 1)
    .filter(
      (first) =>
        latitude !== undefined &&
        longitude !== undefined &&
        distanceBetween(first, { latitude, longitude }) > farthest,
    ),
  code: 'quantity/range',
  message: () => 'the line lies far from the place in the facility file',
  hint: 'have latitude and longitude changed places? GeoJSON writes longitude first',
})

function wrongLength(points: readonly RailPoint[]): Fault {
  const { length } = closedLine(points)
  const [shortest, longest] = lengths
  return {
    points: points.slice(0, length < shortest || length > longest ? 1 : 0),
    code: 'oval/impossible',
    message: () => `the closed line is ${Math.round(length)} m long`,
    hint: `once around the rail of an oval is from ${shortest} to ${longest} m`,
  }
}

function jumps(points: readonly RailPoint[]): Fault {
  const { length } = closedLine(points)
  return {
    points: points.filter((p, i) => {
      const before = points[i - 1] ?? points.at(-1)
      return before !== undefined && distanceBetween(p, before) > length / 4
    }),
    code: 'oval/impossible',
    message: () => 'the line jumps to here over a quarter of the oval',
    hint: 'points are missing, or stand in the wrong order',
  }
}

function crossing(points: readonly RailPoint[]): Fault {
  const at = firstCrossing(localPlane(points))
  return {
    points: at === undefined ? [] : points.slice(at, at + 1),
    code: 'oval/impossible',
    message: () => 'the line crosses itself here',
    hint: 'walk once around, and leave out the way to and from the rail',
  }
}

/** Each asks what makes sense only when the ones before found nothing. */
const checks = [farAway, wrongLength, jumps, crossing] as const

function tooFew(points: readonly RailPoint[], file: SourceFile): Problem {
  const place = points[0]?.place ?? { file: file.path, line: 1, column: 1, length: 1 }
  return problemAt(file, place, 'file/format', `${points.length} points are too few for an oval`, {
    hint: `walk once around and note at least ${fewest}, several on each turn`,
  })
}

/**
 * Checks a walked line: on the earth, enough points, near the facility, once around, without jumps
 * and crossings.
 */
export function checkRailLine(
  all: readonly RailPoint[],
  file: SourceFile,
  where: Where,
): Result<readonly RailPoint[]> {
  const problemsOf = ({ points, code, message, hint }: Fault): Problem[] =>
    points.map((p) => problemAt(file, p.place, code, message(p), { hint }))
  const lost = problemsOf(offEarth(all))
  if (lost.length > 0) return { value: undefined, problems: lost }
  const points = withoutRepeats(all)
  if (points.length < fewest) return { value: undefined, problems: [tooFew(points, file)] }
  for (const check of checks) {
    const problems = problemsOf(check(points, where))
    if (problems.length > 0) return { value: undefined, problems }
  }
  return { value: points, problems: [] }
}

/** The walked line of the rail; a facility has one at most. */
export const railLine = {
  under: 'oval',
  entries: railLineEntry,
  read: (source, { file: name, date, by }, context) => {
    const read = name.toLowerCase().endsWith('.gpx') ? readGpx(source) : readGeoJson(source)
    if (!read.value) return { value: undefined, problems: read.problems }
    const { value: points, problems } = checkRailLine(read.value, source, context)
    return { value: points && { points, date, by, at: context.at }, problems }
  },
} as const satisfies Import<z.output<typeof railLineEntry>, RailLine>
