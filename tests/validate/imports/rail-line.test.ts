import geographicLib from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import type { PlanePoint } from '../../../src/model/geodesy.ts'
import type { RailPoint } from '../../../src/model/rail-line.ts'
import { checkRailLine } from '../../../src/validate/imports/rail-line.ts'

type Oval = {
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
}: Oval): PlanePoint[] {
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

function onEarth(oval: Oval): RailPoint[] {
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

describe('a walked line', () => {
  const good = onEarth({
    straight: 183,
    radius: 69,
    heading: 0.4,
    latitude: 40.6,
    longitude: -89.1,
    points: 60,
    start: 0,
    backward: false,
  })
  const file = { path: 'rail.gpx', text: 'x\n'.repeat(80) }
  const place = { latitude: 40.61, longitude: -89.1 }
  const check = (points: readonly RailPoint[], where: typeof place | object = place) =>
    checkRailLine(points, file, where)

  it('is taken as it is, the repeated last point left out', () => {
    expect(check([...good, ...good.slice(0, 1)]).value).toHaveLength(60)
  })

  it.each<[string, RailPoint[], string]>([
    ['too few points', good.slice(0, 10), 'file/format'],
    [
      'latitude and longitude that have changed places',
      good.map((p) => ({ ...p, latitude: p.longitude, longitude: p.latitude })),
      'quantity/range',
    ],
    [
      'a point that is nowhere',
      [...good, { ...(good[0] as RailPoint), latitude: 99 }],
      'quantity/range',
    ],
    ['a missing stretch', [...good.slice(0, 10), ...good.slice(40)], 'oval/impossible'],
    [
      'a line that crosses itself',
      [...good.slice(0, 20), ...good.slice(30, 40), ...good.slice(20, 30), ...good.slice(40)],
      'oval/impossible',
    ],
    [
      'the wrong size',
      onEarth({
        straight: 20,
        radius: 10,
        heading: 0,
        latitude: 40.6,
        longitude: -89.1,
        points: 60,
        start: 0,
        backward: false,
      }),
      'oval/impossible',
    ],
  ])('is refused with %s', (_, points, code) => expect(check(points).problems[0]?.code).toBe(code))
})
