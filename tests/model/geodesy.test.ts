// Second opinion: geodesy (MIT), by Vincenty's method on the same ellipsoid.
import LatLon from 'geodesy/latlon-ellipsoidal-vincenty.js'
import { describe, expect, it } from 'vitest'
import { closedLine, distanceBetween } from '../../src/model/geodesy.ts'

import { onEarth } from '../support/walked-oval.ts'

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
