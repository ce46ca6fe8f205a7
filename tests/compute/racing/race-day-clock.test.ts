import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { raceDayClock } from '../../../src/compute/racing/race-day-clock.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const min = 60

const h = 3600

const day = {
  first: 13 * h,
  races: 10,
  interval: 20 * min,
  warmUp: h,
  check: 20 * min,
  rounds: 2,
  round: 90 * min,
  soak: 30 * min,
  harrow: h,
  walk: 40 * min,
  pullBack: 90 * min,
  breakEvery: 0,
  pause: 35 * min,
  light: 24 * h,
  longest: 10 * h,
}

describe('a race day by the clock', () => {
  it('counts back from the first race and on from the last: worked by hand', () => {
    // 13:00 less 60 and 20 min, two rounds of 90 + 30 min, an hour and 40 min; then 9 intervals,
    // one more, and 60 + 90 + 90 min.
    const at = raceDayClock.compute(day)
    expect(
      [at.start, at.look, at.horses, at.last, at.after, at.done].map((t) => numberOf(t) / min),
    ).toEqual([6 * 60, 11 * 60 + 40, 12 * 60, 16 * 60, 16 * 60 + 20, 20 * 60 + 20])
  })

  it('is never shorter with one race, one round or one minute more', () => {
    fc.assert(
      fc.property(whole(1, 14), whole(0, 2), whole(10, 30), (races, rounds, interval) => {
        const long = (more: object): number =>
          numberOf(
            raceDayClock.compute({
              ...day,
              round: 30 * min,
              races,
              rounds,
              interval: interval * min,
              ...more,
            }).long,
          )
        expect(long({ races: races + 1 })).toBeGreaterThan(long({}))
        expect(long({ rounds: rounds + 1 })).toBeGreaterThan(long({}))
        expect(long({ walk: day.walk + 1 })).toBeGreaterThan(long({}))
      }),
      FEW,
    )
  })

  it('counts a break in place of an interval: three in ten races, 15 min each', () => {
    const at = raceDayClock.compute({ ...day, breakEvery: 3 })
    expect(at.breaks).toBe(3)
    expect(numberOf(at.last) / min).toBe(16 * 60 + 45)
  })

  it('works until midnight where the last light comes after it', () => {
    // 60 degrees north in June: half an hour after midnight. Clear at 20:20, done at 24:20 but for water.
    const late = { ...day, first: 17 * h, light: 24.5 * h }
    const at = raceDayClock.compute(late)
    expect([at.pulled, at.harrowed, at.done].map((t) => numberOf(t) / min)).toEqual([
      21 * 60 + 50,
      22 * 60 + 50,
      22 * 60 + 50,
    ])
    expectRefused([at.watered], /after-light/)
  })

  it('plans nothing that would end after the last light', () => {
    // Clear at 16:20; pulled back at 17:50, harrowed at 18:50; watering would end at 20:20.
    const at = raceDayClock.compute({ ...day, light: 20 * h })
    expect([at.pulled, at.harrowed, at.done].map((t) => numberOf(t) / min)).toEqual([
      17 * 60 + 50,
      18 * 60 + 50,
      18 * 60 + 50,
    ])
    expectRefused([at.watered], /^after-light$/)
    fc.assert(
      fc.property(whole(12, 24), (light) => {
        const { after, done } = raceDayClock.compute({ ...day, light: light * h })
        expect(numberOf(done)).toBeLessThanOrEqual(Math.max(numberOf(after), light * h))
      }),
      FEW,
    )
  })

  it('hands over at half time where the day is longer than one crew may work', () => {
    const at = raceDayClock.compute(day)
    expect(at.shifts).toBe(2)
    expect(numberOf(at.over) - numberOf(at.start)).toBeLessThanOrEqual(10 * h)
    expect(numberOf(at.done) - numberOf(at.over)).toBeLessThanOrEqual(10 * h)
    expectRefused([raceDayClock.compute({ ...day, longest: 15 * h }).over], /^one-crew$/)
  })

  it('goes on past midnight, and leaves all work after it for first light', () => {
    // From 21:30 nine intervals of 20 min: the last race at 0:30, clear at 0:50 of the next day.
    // 90 min of pulling back and 60 of harrowing are left.
    const at = raceDayClock.compute({ ...day, first: 21.5 * h })
    expect([at.last, at.after, at.done, at.left].map((t) => numberOf(t) / min)).toEqual([
      24 * 60 + 30,
      24 * 60 + 50,
      24 * 60 + 50,
      150,
    ])
    expectRefused([at.pulled, at.harrowed, at.watered], /after-light/)
    // In at 14:30, out at 0:50.
    expect(numberOf(at.long) / min).toBe(10 * 60 + 20)
  })

  it('leaves for first light what is neither pulled back nor harrowed, water apart', () => {
    const left = (light: number) =>
      numberOf(raceDayClock.compute({ ...day, light: light * h }).left) / min
    // Clear at 16:20; 90 min of pulling back until 17:50, 60 of harrowing until 18:50.
    expect([17, 18, 19, 24].map(left)).toEqual([150, 60, 0, 0])
  })

  it('refuses a day that would begin before midnight, and an end after the next noon', () => {
    expectRefused([raceDayClock.compute({ ...day, rounds: 8 }).start], /^begins-day-before$/)
    const slow = { ...day, interval: 3 * h }
    expectRefused([raceDayClock.compute(slow).done], /^ends-next-day$/)
    expect(numberOf(raceDayClock.compute({ ...slow, interval: 2 * h }).after) / h).toBe(33)
  })
})
