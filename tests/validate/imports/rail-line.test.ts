import { describe, expect, it } from 'vitest'
import type { RailPoint } from '../../../src/model/rail-line.ts'
import { checkRailLine } from '../../../src/validate/imports/rail-line.ts'

import { onEarth } from '../../support/walked-oval.ts'

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
