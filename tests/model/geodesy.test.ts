// Second opinion: geodesy (MIT), by Vincenty's method on the same ellipsoid.
import LatLon from 'geodesy/latlon-ellipsoidal-vincenty.js'
import geographicLib from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { closedLine, distanceBetween, type PlanePoint } from '../../src/model/geodesy.ts'
import type { RailPoint } from '../../src/model/rail-line.ts'

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

describe('length on the earth', () => {
  it('is what another library finds by another method, to a millimeter', () => {
    for (const [a, b] of [
      [
        [40, -80],
        [40.01, -80.02],
      ],
      [
        [-33, 151],
        [-33.004, 151.001],
      ],
      [
        [60, 10],
        [60.001, 10.01],
      ],
    ] as const) {
      const theirs = new LatLon(a[0], a[1]).distanceTo(new LatLon(b[0], b[1]))
      expect(
        distanceBetween({ latitude: a[0], longitude: a[1] }, { latitude: b[0], longitude: b[1] }),
      ).toBeCloseTo(theirs, 3)
    }
  })

  it('of an oval drawn with many points comes close to two straights and a circle, from below', () => {
    const oval = {
      straight: 183,
      radius: 69,
      heading: 1,
      latitude: 52,
      longitude: -1,
      points: 400,
      start: 0,
      backward: true,
    }
    const { length } = closedLine(onEarth(oval))
    const true_ = 2 * 183 + 2 * Math.PI * 69
    expect(length).toBeLessThan(true_)
    expect(length / true_).toBeGreaterThan(0.9998)
  })
})
