import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { OvalGeometry } from '../../../../src/model/manual/geometry.ts'
import { widthAt } from '../../../../src/render/drawings/oval/shape.ts'
import { lanesOf } from '../../../../src/render/drawings/passes/lanes.ts'
import { lapOf, routeOf } from '../../../../src/render/drawings/passes/route.ts'
import { gateAt, ovalOf } from '../../support/oval-geometry.ts'

const few = { numRuns: 60 }
const meters = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const ovals = fc
  .record({
    straight: meters(120, 320),
    radius: meters(50, 120),
    straights: meters(12, 30),
    turns: meters(12, 30),
    gates: fc.array(meters(0, 1), { maxLength: 3 }),
  })
  .map(({ straight, radius, straights, turns, gates }): OvalGeometry => {
    const g = ovalOf(straight, radius, [straights, turns])
    return { ...g, marks: gates.map((share) => gateAt(share * g.railLength * 0.999)) }
  })

/** Strips as the worksheet counts them: by the widest part of the track. */
function stripsFor(g: OvalGeometry, covers: number, over: number): number {
  return Math.ceil(Math.max(g.widthStraights, g.widthTurns) / (covers - over) - 1e-9)
}

describe('laps on the oval', () => {
  it('cover all of the track at every station, where machines move over too', () => {
    fc.assert(
      fc.property(
        ovals,
        meters(2, 7),
        fc.constantFrom('rail' as const, 'outside' as const),
        (g, covers, from) => {
          const strips = stripsFor(g, covers, 0.3)
          const lanes = lanesOf(g, { strips, covers, band: undefined, from })
          const route = routeOf(g)
          const laps = Array.from({ length: strips }, (_, i) => lapOf(g, lanes, route, i))
          for (let s = 0; s < g.railLength; s += 7) {
            const bands = laps
              .flatMap((lap) =>
                [s, s + g.railLength, s + 2 * g.railLength]
                  .filter((at) => at >= lap.from && at <= lap.to)
                  .map((at) => lap.at(at)),
              )
              .sort((a, b) => a - b)
            let shut = 0
            for (const middle of bands)
              if (middle - covers / 2 <= shut + 1e-6) shut = Math.max(shut, middle + covers / 2)
            expect(shut, `station ${s}`).toBeGreaterThanOrEqual(widthAt(g, s) - 1e-6)
          }
        },
      ),
      few,
    )
  })

  it('keep the tool between the rail and the outside edge', () => {
    fc.assert(
      fc.property(ovals, meters(2, 7), (g, covers) => {
        const strips = stripsFor(g, covers, 0.3)
        const lanes = lanesOf(g, { strips, covers, band: undefined, from: 'rail' })
        for (let s = 0; s < g.railLength; s += 31)
          for (let lap = 0; lap < strips; lap++) {
            const middle = lanes.middle(lap, s)
            expect(middle - covers / 2).toBeGreaterThanOrEqual(-1e-6)
            expect(middle + covers / 2).toBeLessThanOrEqual(widthAt(g, s) + 1e-6)
          }
      }),
      few,
    )
  })

  it('begin and change strips on a straight, once around after the first', () => {
    fc.assert(
      fc.property(ovals, (g) => {
        const { start, shift } = routeOf(g)
        const half = g.railLength / 2
        expect(start % half).toBeGreaterThanOrEqual(0)
        expect((start % half) + shift).toBeLessThanOrEqual(g.straight)
      }),
      few,
    )
  })
})

describe('the way in and out', () => {
  const g = ovalOf(180, 69)

  it('is by the gate for machines, work beginning just past it', () => {
    const marks = [gateAt(40, 'A'), gateAt(440, 'C', true)]
    const route = routeOf({ ...g, marks })
    expect(route.entry?.name).toBe('C')
    expect(route.start).toBeGreaterThan(440)
    expect(route.start).toBeLessThan(480)
    // The next gate ahead, so that no machine turns round on finished ground.
    expect(route.exit?.name).toBe('A')
  })

  it('is by the only gate there is, after another lap', () => {
    const route = routeOf({ ...g, marks: [gateAt(40, 'A')] })
    expect([route.entry?.name, route.exit?.name]).toEqual(['A', 'A'])
  })

  it('leads from a gate in a turn to the next straight', () => {
    const route = routeOf({ ...g, marks: [gateAt(250, 'T')] })
    expect(route.start).toBeGreaterThan(g.railLength / 2)
    expect(route.start).toBeLessThan(g.railLength / 2 + 20)
  })

  it('is left open where the facility names no gate', () => {
    expect(routeOf(g)).toMatchObject({ entry: undefined, exit: undefined })
  })
})
