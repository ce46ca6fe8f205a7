import fc from 'fast-check'
import geographicLib from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { distanceFromOval, fitOval } from '../../../../src/compute/oval/rail-line/fit-oval.ts'
import { localPlane, type PlanePoint } from '../../../../src/model/geodesy.ts'
import type { RailPoint } from '../../../../src/model/rail-line.ts'

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
      longitude: -89.1,
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
