import { describe, expect, it } from 'vitest'
import { betweenRaces } from '../../../src/compute/racing/between-races.ts'
import { expectRefused, numberOf } from '../support/answers.ts'

const min = 60

describe('work between two races', () => {
  const half = {
    interval: 20 * min,
    clear: 3 * min,
    parade: 10 * min,
    reserve: min,
    whole: 61 * min,
    all: 8,
    gain: 2.7,
    harrows: 1,
  }

  it('has six minutes of twenty, since the field comes out well before the post', () => {
    // Common practice, no source: off after 3 min, parade and scores in the last 10.
    const out = betweenRaces.compute(half)
    expect(numberOf(out.free) / min).toBe(6)
    expect([out.laps, out.width]).toEqual([0, 0])
    // 14 min of horses and reserve, and a lap of 7.6 min.
    expect(numberOf(out.needed) / min).toBeCloseTo(21.625, 9)
  })

  it('fits just one lap into the interval that it asks for', () => {
    const { needed } = betweenRaces.compute(half)
    expect(betweenRaces.compute({ ...half, interval: numberOf(needed) }).laps).toBe(1)
  })

  it('says how many harrows would drive one lap, each a part of it', () => {
    expect(betweenRaces.compute(half).need).toBe(2)
    const two = betweenRaces.compute({ ...half, whole: half.whole / 2, harrows: 2 })
    expect([two.laps, two.need]).toEqual([1, 2])
  })

  it('refuses an interval that is all the horses', () =>
    expectRefused(
      [betweenRaces.compute({ ...half, interval: 12 * min }).free],
      /^interval-too-short$/,
    ))
})
