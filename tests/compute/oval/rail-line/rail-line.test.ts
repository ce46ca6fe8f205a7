import fc from 'fast-check'
// Second opinion: geodesy (MIT), by Vincenty's method on the same ellipsoid.
import LatLon from 'geodesy/latlon-ellipsoidal-vincenty.js'
import geographicLib from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { distanceFromOval, fitOval } from '../../../../src/compute/oval/rail-line/fit-oval.ts'
import { walkedLine } from '../../../../src/compute/oval/rail-line/walked-line.ts'
import {
  closedLine,
  distanceBetween,
  localPlane,
  type PlanePoint,
} from '../../../../src/model/geodesy.ts'
import type { RailPoint } from '../../../../src/model/rail-line.ts'
import { checkRailLine } from '../../../../src/validate/check-rail-line.ts'

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

const ovals = fc.record({
  straight: fc.integer({ min: 60, max: 900 }),
  radius: fc.integer({ min: 35, max: 250 }),
  heading: fc.double({ min: -3, max: 3, noNaN: true }),
  latitude: fc.integer({ min: -60, max: 60 }),
  longitude: fc.integer({ min: -179, max: 179 }),
  points: fc.integer({ min: 40, max: 160 }),
  start: fc.double({ min: 0, max: 0.999, noNaN: true }),
  backward: fc.boolean(),
})

describe('an oval laid through a walked line', () => {
  it('is the oval itself, from a practice ring to two miles, anywhere, from any start, in either direction', () => {
    fc.assert(
      fc.property(ovals, (oval) => {
        const found = fitOval(localPlane(onEarth(oval)))
        expect(found.straight).toBeCloseTo(oval.straight, 1)
        expect(found.radius).toBeCloseTo(oval.radius, 1)
        expect(found.worst).toBeLessThan(0.05)
      }),
      { numRuns: 40 },
    )
  })

  it('stays near the truth when a phone wanders by a step at every point', () => {
    const oval = {
      straight: 183,
      radius: 69,
      heading: 0.4,
      latitude: 40.6,
      longitude: -83.9,
      points: 120,
      start: 0,
      backward: false,
    }
    const wander = (i: number): number => Math.sin(i * 12.9898) * 0.8
    const points = localPlane(onEarth(oval)).map(
      ([x, y], i): PlanePoint => [x + wander(i), y + wander(i + 500)],
    )
    const found = fitOval(points)
    expect(Math.abs(found.radius - 69)).toBeLessThan(0.5)
    expect(Math.abs(found.straight - 183)).toBeLessThan(1.5)
  })

  it('sees points outside as above zero and inside as below', () => {
    expect(distanceFromOval([0, 80], [0, 0, 0, 180, 70])).toBeCloseTo(10, 12)
    expect(distanceFromOval([170, 0], [0, 0, 0, 180, 70])).toBeCloseTo(10, 12)
    expect(distanceFromOval([0, 60], [0, 0, 0, 180, 70])).toBeCloseTo(-10, 12)
  })
})

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

  it('gives the lap back when the line is walked at the measuring line instead of the rail', () => {
    const lap = 2 * 183 + 2 * Math.PI * (69 + 0.9144)
    const walked = walkedLine.compute({ length: lap, walked: 0.9144, offset: 0.9144, lap })
    expect(walked.off).toBeCloseTo(0, 9)
    expect(walked.rail).toBeCloseTo(2 * 183 + 2 * Math.PI * 69, 9)
  })
})

describe('a walked line', () => {
  const good = onEarth({
    straight: 183,
    radius: 69,
    heading: 0.4,
    latitude: 40.6,
    longitude: -83.9,
    points: 60,
    start: 0,
    backward: false,
  })
  const file = { path: 'rail.gpx', text: 'x\n'.repeat(80) }
  const place = { latitude: 40.61, longitude: -83.9 }
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
        longitude: -83.9,
        points: 60,
        start: 0,
        backward: false,
      }),
      'oval/impossible',
    ],
  ])('is refused with %s', (_, points, code) => expect(check(points).problems[0]?.code).toBe(code))
})
