import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sealingTime } from '../../../src/compute/sealing/sealing-time.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const min = 60
const usual = {
  flatten: 40 * min,
  laps: 5,
  roll: 50 * min,
  rollers: 2,
  people: 3,
  margin: 10 * min,
}

describe('time to seal', () => {
  it('is one after the other where people are too few for screen and trucks at once', () => {
    expect(sealingTime.compute(usual)).toEqual({
      need: 4,
      'at-once': 0,
      time: 90 * min,
      'start-before': 100 * min,
      'flat-before': 50 * min,
    })
  })

  it('is the longer of both, and one lap of the screen, where everything drives at once', () => {
    // 50 min, and 40 ÷ 5 = 8 min ahead.
    const out = sealingTime.compute({ ...usual, people: 4 })
    expect([out['at-once'], out.time]).toEqual([1, 58 * min])
  })

  it('is the rolling alone where nothing flattens and no margin is kept', () => {
    const out = sealingTime.compute({ ...usual, flatten: 0, laps: 1, margin: 0 })
    expect(out['start-before']).toBe(50 * min)
  })

  it('never takes less than the longer part, nor more than both', () => {
    fc.assert(
      fc.property(whole(0, 200), whole(0, 200), whole(1, 30), whole(1, 9), (f, r, laps, people) => {
        const time = numberOf(
          sealingTime.compute({ ...usual, flatten: f, roll: r, laps, people }).time,
        )
        expect(time).toBeGreaterThanOrEqual(Math.max(f, r))
        expect(time).toBeLessThanOrEqual(f + r)
      }),
      FEW,
    )
  })
})
