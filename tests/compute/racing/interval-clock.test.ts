import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { intervalClock } from '../../../src/compute/racing/interval-clock.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const min = 60

// A half-mile with one harrow and one truck: 7.6 and 9.5 min a lap.
const half = {
  interval: 20 * min,
  clear: 3 * min,
  parade: 10 * min,
  reserve: min,
  lap: 7.6 * min,
  whole: 8,
  rail: 798,
  speed: 1.4,
  trucks: 1,
  reach: 899,
  bar: 0,
}

describe('the interval by the minute', () => {
  it('holds neither harrow nor truck between two races of a half-mile: worked by hand', () => {
    // Common practice, no source: 20 − 3 − 10 − 1 = 6 min.
    const at = intervalClock.compute(half)
    expect([at.free, at.off, at.open].map((t) => numberOf(t) / min)).toEqual([6, 9, 10])
    expect([at.laps, at['water-laps'], at['water-alone'], at.left]).toEqual([0, 0, 0, 8])
    // 14 + 7.6 + 9.5 min.
    expect(numberOf(at.both) / min).toBeCloseTo(31.1, 9)
  })

  it('counts the way of the truck, half a bar out from the rail: worked by hand', () => {
    // A bar of 4.8 m: 798 + 3.1416 · 4.8 = 813.08 m at 1.4 m/s takes 580.8 s, 10.8 s more than the rail.
    const wide = intervalClock.compute({ ...half, bar: 4.8 })
    expect(numberOf(wide['water-lap'])).toBeCloseTo(580.77, 2)
    expect(numberOf(intervalClock.compute(half)['water-lap'])).toBeCloseTo(570, 9)
    // A tank that reaches 805 m reaches once along the rail, and not once around on the truck's way.
    expect(intervalClock.compute({ ...half, reach: 805 })['tank-laps']).toBe(1)
    expect(intervalClock.compute({ ...half, reach: 805, bar: 4.8 })['tank-laps']).toBe(0)
  })

  it('holds one lap of each in the break that it asks for', () => {
    const { both } = intervalClock.compute(half)
    const at = intervalClock.compute({ ...half, interval: numberOf(both) + 1 })
    expect([at['water-laps'], Number(at.laps) >= 1]).toEqual([1, true])
  })

  it('has harrow and water off before people are counted', () => {
    fc.assert(
      fc.property(whole(15, 60), whole(3, 20), whole(1, 3), (interval, lap, trucks) => {
        const at = intervalClock.compute({
          ...half,
          interval: interval * min,
          lap: lap * min,
          trucks,
        })
        expect(numberOf(at.harrowed)).toBeLessThanOrEqual(numberOf(at.off) + 1e-6)
        if (Number(at['water-laps']) > 0)
          expect(numberOf(at.watered)).toBeLessThanOrEqual(numberOf(at.off) + 1e-6)
        expect(Number(at['water-laps'])).toBeLessThanOrEqual(Number(at['water-alone']))
      }),
      FEW,
    )
  })

  it('plans no more water than full tanks reach', () => {
    const at = intervalClock.compute({ ...half, interval: 60 * min, reach: 525 })
    expect(at['water-laps']).toBe(0)
    expectRefused([at.both], /^tank-too-small$/)
  })

  it('gives no water where there is no truck', () =>
    expectRefused([intervalClock.compute({ ...half, speed: 0 })['water-laps']], /^no-water-truck$/))

  it('refuses an interval that is all the horses', () =>
    expectRefused(
      [intervalClock.compute({ ...half, interval: 14 * min }).off],
      /^interval-too-short$/,
    ))
})
