import geographicLib from 'geographiclib-geodesic'
import type { PlanePoint } from '../../src/model/geodesy.ts'
import type { RailPoint } from '../../src/model/rail-line.ts'

/** An oval somewhere on the earth, as somebody walks along its rail: m, rad and degrees. */
type WalkedOval = {
  straight: number
  radius: number
  heading: number
  latitude: number
  longitude: number
  points: number
  start: number
  backward: boolean
}

/** Points of an oval in its own plane, evenly along the rail. */
function planePoints({
  straight: s,
  radius: r,
  heading,
  points,
  start,
  backward,
}: WalkedOval): PlanePoint[] {
  const rail = 2 * s + 2 * Math.PI * r
  const arc = Math.PI * r
  return Array.from({ length: points }, (_, i) => {
    const at = (((((backward ? -i : i) / points + start) % 1) + 1) % 1) * rail
    const [x, y] =
      at < s
        ? [at - s / 2, -r]
        : at < s + arc
          ? [s / 2 + r * Math.sin((at - s) / r), -r * Math.cos((at - s) / r)]
          : at < 2 * s + arc
            ? [s / 2 - (at - s - arc), r]
            : [-s / 2 - r * Math.sin((at - 2 * s - arc) / r), r * Math.cos((at - 2 * s - arc) / r)]
    return [
      x * Math.cos(heading) - y * Math.sin(heading),
      x * Math.sin(heading) + y * Math.cos(heading),
    ]
  })
}

/** The points of its rail, in the order in which they are walked. */
export function onEarth(oval: WalkedOval): RailPoint[] {
  return planePoints(oval).map(([x, y], i) => {
    const to = geographicLib.Geodesic.WGS84.Direct(
      oval.latitude,
      oval.longitude,
      (Math.atan2(x, y) * 180) / Math.PI,
      Math.hypot(x, y),
    )
    return {
      latitude: to.lat2 ?? 0,
      longitude: to.lon2 ?? 0,
      place: { file: 'rail.gpx', line: i + 1, column: 1, length: 1 },
    }
  })
}
