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
  rollLaps: 36,
  people: 3,
  margin: 10 * min,
}

describe('time to seal', () => {
  it('is one after the other where people are too few for screen and trucks at once', () => {
    expect(sealingTime.compute(usual)).toEqual({
      need: 4,
      'at-once': 1,
      rolling: 50 * min,
      behind: 100 * min,
      time: 90 * min,
      'start-before': 100 * min,
      'flat-before': 50 * min,
    })
  })

  it('is the longer of both, and one lap of the screen, where everything drives at once', () => {
    // 50 min, and 40 ÷ 5 = 8 min ahead.
    const out = sealingTime.compute({ ...usual, people: 4 })
    expect([out['at-once'], out.time]).toEqual([2, 58 * min])
  })

  it('is the rolling alone where nothing flattens and no margin is kept', () => {
    const out = sealingTime.compute({ ...usual, flatten: 0, laps: 1, margin: 0 })
    expect(out['start-before']).toBe(50 * min)
  })

  it('lets a truck without a driver stand', () => {
    // 36 laps at 18 a truck take 50 min; one driver alone takes them all, then 40 min of flattening.
    const alone = sealingTime.compute({ ...usual, people: 1 })
    expect(alone.rolling).toBe(100 * min)
    expect(alone.time).toBe(140 * min)
    // Five trucks take 3 laps each of 11; three drivers take 4.
    const five = { ...usual, rollers: 5, rollLaps: 11 }
    expect(numberOf(sealingTime.compute({ ...five, people: 3 }).rolling)).toBeCloseTo(
      (50 * min * 4) / 3,
      9,
    )
  })

  it('never takes longer with one person more', () => {
    fc.assert(
      fc.property(whole(0, 6), whole(1, 60), whole(1, 9), (rollers, rollLaps, people) => {
        const time = (hands: number): number =>
          numberOf(sealingTime.compute({ ...usual, rollers, rollLaps, people: hands }).time)
        expect(time(people + 1)).toBeLessThanOrEqual(time(people))
      }),
      FEW,
    )
  })

  it('lets rollers follow the screen as far as there are drivers, where that is quicker', () => {
    // Three trucks, 12 laps each of 36, and four people: two trucks follow the screen with 18 laps each.
    const three = sealingTime.compute({ ...usual, rollers: 3, people: 4, roll: 40 * min })
    expect([three['at-once'], three.behind, three.time]).toEqual([2, 60 * min, 68 * min])
  })

  it('never takes longer with one truck more', () => {
    fc.assert(
      fc.property(whole(1, 6), whole(1, 60), whole(1, 9), (trucks, rollLaps, people) => {
        const time = (rollers: number): number => {
          // A truck takes two minutes for a lap.
          const roll = 2 * min * Math.ceil(rollLaps / rollers)
          return numberOf(sealingTime.compute({ ...usual, rollers, rollLaps, roll, people }).time)
        }
        expect(time(trucks + 1)).toBeLessThanOrEqual(time(trucks) + 1e-6)
      }),
      FEW,
    )
  })

  it('never takes less than the longer part, nor more than both', () => {
    fc.assert(
      fc.property(whole(0, 200), whole(0, 200), whole(1, 30), whole(2, 9), (f, r, laps, people) => {
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
