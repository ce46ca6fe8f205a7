import { describe, expect, it } from 'vitest'
import { intervalClock } from '../../../src/compute/racing/interval-clock.ts'
import { expectRefused, numberOf } from '../support/answers.ts'

const min = 60

describe('the interval by the minute', () => {
  const gap = {
    interval: 20 * min,
    clear: 3 * min,
    parade: 4 * min,
    reserve: min,
    lap: 5 * min,
    laps: 2,
    whole: 8,
    rail: 800,
    speed: 2,
  }

  it('ends in time: the harrow is off before the track is called open', () => {
    const at = intervalClock.compute(gap)
    expect([at.clear, at.harrowed, at.off, at.open].map((t) => numberOf(t) / min)).toEqual([
      3, 13, 15, 16,
    ])
    expect(at.left).toBe(6)
    // 7 minutes behind the first lap, at 800 m in 400 s: one lap.
    expect(at['water-laps']).toBe(1)
  })

  it('says what water fits in place of the harrow where none fits behind it', () => {
    // 12 minutes; a lap of the harrow takes 8, one of water 800 m at 2 m/s = 6 min 40 s.
    const at = intervalClock.compute({ ...gap, lap: 8 * min, laps: 1 })
    expect(at['water-laps']).toBe(0)
    expect(at['water-alone']).toBe(1)
    expect(numberOf(at['water-lap']) / min).toBeCloseTo(6 + 2 / 3, 9)
  })

  it('gives no water where there is no truck', () =>
    expectRefused([intervalClock.compute({ ...gap, speed: 0 })['water-laps']], /^no-water-truck$/))
})
