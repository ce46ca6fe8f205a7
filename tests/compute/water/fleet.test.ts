import { describe, expect, it } from 'vitest'
import { fleet, fleetOfTwo } from '../../../src/compute/water/fleet.ts'
import { numberOf } from '../support/answers.ts'

const min = 60
/** Loads of 2 m³ every 40 min, of which 10 min at the hose. */
const first = {
  trucks: 1,
  load: 2,
  cycle: 40 * min,
  speed: 2,
  reach: 1000,
  fillFlow: 2 / (10 * min),
  points: 1,
}

describe('all water trucks together', () => {
  it('are the one truck, where there is one', () => {
    const out = fleet.compute(first)
    expect([out.all, out.mean, out.pace, out.range]).toEqual([1, 2, 2, 1000])
    expect(numberOf(out.turn) / min).toBeCloseTo(40, 9)
  })

  it('bring no more than the hose gives', () => {
    // Eight would bring 16 m³ in 40 min; the hose gives 8: each turns in 80 min.
    const out = fleet.compute({ ...first, trucks: 8 })
    expect(out.rate).toBeCloseTo(first.fillFlow, 12)
    expect(numberOf(out.turn) / min).toBeCloseTo(80, 9)
    expect(numberOf(fleet.compute({ ...first, trucks: 8, points: 2 }).turn) / min).toBeCloseTo(
      40,
      9,
    )
  })

  it('add their rates where they are not alike, each at its own speed', () => {
    // 1 m³ fills in 5 min and is away for 15: 1 m³ in 20 min, beside 2 m³ in 40.
    const out = fleetOfTwo.compute({
      ...first,
      depth: 0.001,
      trucks2: 1,
      load2: 1,
      away2: 15 * min,
      flow2: 0.01,
      width2: 4,
    })
    expect(numberOf(out.rate) * min).toBeCloseTo(2 / 40 + 1 / 20, 9)
    // In 40 min one load of 2 m³ and two of 1: the mean of three loads.
    expect(out.mean).toBeCloseTo(4 / 3, 9)
    // 0.01 m³/s on 4 m, 1 mm deep: 2.5 m/s; 1 m³ reaches 250 m.
    expect(
      [numberOf(out.speed2), numberOf(out.reach2)].map((v) => Math.round(v * 1e6) / 1e6),
    ).toEqual([2.5, 250])
    expect(out.pace).toBeCloseTo(2.25, 9)
    expect(out.range).toBeCloseTo(625, 9)
  })
})
