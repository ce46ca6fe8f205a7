import geographicLib from 'geographiclib-geodesic'
import type { RailPoint } from './rail-line.ts'

// The package is CommonJS: its names are not seen as exports of their own.
const { Geodesic } = geographicLib

/**
 * A point in a plane that touches the earth at the middle of a line: meters to the east and to the
 * north.
 */
export type PlanePoint = readonly [number, number]

type Degrees = Pick<RailPoint, 'latitude' | 'longitude'>

/**
 * Length of a closed line, m, and the area inside it, m², on the WGS84 ellipsoid. @see
 * journal-geodesy-87
 */
export function closedLine(points: readonly Degrees[]): {
  readonly length: number
  readonly area: number
} {
  const polygon = Geodesic.WGS84.Polygon(false)
  for (const p of points) polygon.AddPoint(p.latitude, p.longitude)
  const { perimeter, area } = polygon.Compute(false, true)
  return { length: perimeter, area: Math.abs(area ?? 0) }
}

/** Geodesic distance of two points on WGS84, m. @see journal-geodesy-87 */
export const distanceBetween = (a: Degrees, b: Degrees): number =>
  Geodesic.WGS84.Inverse(a.latitude, a.longitude, b.latitude, b.longitude).s12 ?? 0

/**
 * Points in a plane, by distance and direction from their middle (azimuthal equidistant): over an
 * oval the distances between points are wrong by less than a hair's breadth.
 */
export function localPlane(points: readonly Degrees[]): readonly PlanePoint[] {
  const mean = (of: (p: Degrees) => number): number =>
    points.reduce((sum, p) => sum + of(p), 0) / points.length
  const [latitude, longitude] = [mean((p) => p.latitude), mean((p) => p.longitude)]
  return points.map((p) => {
    const { s12 = 0, azi1 = 0 } = Geodesic.WGS84.Inverse(
      latitude,
      longitude,
      p.latitude,
      p.longitude,
    )
    const azimuth = (azi1 * Math.PI) / 180
    return [s12 * Math.sin(azimuth), s12 * Math.cos(azimuth)]
  })
}
