import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { distanceFromOval, fitOval } from '../../../../src/compute/oval/rail-line/fit-oval.ts'
import { localPlane, type PlanePoint } from '../../../../src/model/geodesy.ts'

import { onEarth } from '../../../support/walked-oval.ts'

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
