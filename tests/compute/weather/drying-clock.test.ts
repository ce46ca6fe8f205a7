import { expect, it } from 'vitest'
import { dryingClock } from '../../../src/compute/weather/drying-clock.ts'
import { numberOf } from '../support/answers.ts'

const h = 3600
const day = { daylight: 14 * h, rise: 6 * h, set: 20 * h }

it('has half of a day dried at noon, and a quarter after a third of the daylight', () => {
  // Half sine: (1 - cos 60°) / 2 = 1/4.
  const out = dryingClock.compute({ ...day, early: 3.5 * h, late: 7 * h })
  expect(numberOf(out['early-day'])).toBe(1)
  expect(numberOf(out['early-time'])).toBeCloseTo((6 + 14 / 3) * h, 3)
  expect(numberOf(out['late-time'])).toBeCloseTo(13 * h, 3)
})

it('goes on at sunrise of the next day', () => {
  const out = dryingClock.compute({ ...day, early: 0, late: 14 * h })
  expect([numberOf(out['early-day']), numberOf(out['early-time'])]).toEqual([1, 6 * h])
  expect([numberOf(out['late-day']), numberOf(out['late-time'])]).toEqual([2, 6 * h])
})
