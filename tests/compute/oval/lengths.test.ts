import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { edgeRise } from '../../../src/compute/oval/edge-rise.ts'
import { laneStagger } from '../../../src/compute/oval/lane-stagger.ts'
import { lapExtra } from '../../../src/compute/oval/lap-extra.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { outsideLength } from '../../../src/compute/oval/outside-length.ts'
import { pylonCount } from '../../../src/compute/oval/pylon-count.ts'
import { railLength } from '../../../src/compute/oval/rail-length.ts'
import { stationCount } from '../../../src/compute/oval/station-count.ts'
import { turnLength } from '../../../src/compute/oval/turn-length.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, ovals } from '../support/realistic.ts'

const straight = 600 * FT
const radius = 226.25 * FT

describe('lengths around an oval', () => {
  it('gives rail and outside edge of a half mile', () => {
    // 1200 + 2π × 226.25 = 2621.571; 70 ft out 2π × 70 = 439.823 more
    expect(numberOf(railLength.compute({ straight, radius }).length) / FT).toBeCloseTo(2621.5707, 4)
    expect(
      numberOf(outsideLength.compute({ straight, radius, widthTurns: 70 * FT }).length) / FT,
    ).toBeCloseTo(3061.3936, 4)
  })

  it('adds 6.28 ft to a lap for each foot farther out, on every oval', () => {
    const extra = numberOf(lapExtra.compute({ out: FT }).extra)
    expect(extra / FT).toBeCloseTo(6.28319, 5)
    fc.assert(
      fc.property(ovals, feet(0, 60), (o, x) => {
        expect(
          lapLength(o.straight, o.radius, x + FT) - lapLength(o.straight, o.radius, x),
        ).toBeCloseTo(extra, 9)
      }),
      FEW,
    )
  })

  it('gives two turns and two straights that make a lap', () => {
    fc.assert(
      fc.property(ovals, feet(0, 5), (o, offset) => {
        const turn = numberOf(turnLength.compute({ radius: o.radius, offset }).length)
        expect(2 * turn + 2 * o.straight).toBeCloseTo(lapLength(o.straight, o.radius, offset), 8)
      }),
      FEW,
    )
  })

  it('counts stations: a full last gap does not need one more', () => {
    expect(stationCount.compute({ rail: 2621.2 * FT, spacing: 100 * FT }).count).toBe(27)
    expect(stationCount.compute({ rail: 2600 * FT, spacing: 100 * FT }).count).toBe(26)
  })

  it('never leaves a gap wider than the spacing', () => {
    fc.assert(
      fc.property(ovals, feet(20, 300), (o, spacing) => {
        const rail = lapLength(o.straight, o.radius, 0)
        const count = numberOf(stationCount.compute({ rail, spacing }).count)
        expect(count * spacing).toBeGreaterThanOrEqual(rail - 1e-3)
        expect((count - 1) * spacing).toBeLessThan(rail)
      }),
      FEW,
    )
  })

  it('raises the outside edge by slope times width', () => {
    // 2 % of 60 ft = 1.2 ft; 8 % of 70 ft = 5.6 ft
    const rise = edgeRise.compute({
      widthStraights: 60 * FT,
      widthTurns: 70 * FT,
      crossFallStraights: 0.02,
      crossFallTurns: 0.08,
    })
    expect(numberOf(rise.straights) / FT).toBeCloseTo(1.2, 9)
    expect(numberOf(rise.turns) / FT).toBeCloseTo(5.6, 9)
  })

  it('sets no stagger in the first lane, and refuses a lane that does not exist', () => {
    expect(laneStagger(1, 1.22, 0.3, 0.2)).toBe(0)
    expect(() => laneStagger(0, 1.22, 0.3, 0.2)).toThrow(RangeError)
  })

  it('counts 36 pylons on the turns and 20 on the straights of a half mile', () => {
    // 2π × 226.25 ÷ 40 = 35.5, 1200 ÷ 60 = 20
    expect(pylonCount(straight, radius, 40 * FT, 60 * FT)).toBe(56)
    expect(() => pylonCount(straight, radius, 0, 60 * FT)).toThrow(RangeError)
  })
})
