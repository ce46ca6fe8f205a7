import { expect, it } from 'vitest'
import { haul } from '../../../src/compute/money/haul.ts'
import { numberOf } from '../support/answers.ts'
import { FT, MPH } from '../support/realistic.ts'

const ton = 907.18474
const job = {
  bed: 10 * ton,
  bucket: 14 * FT ** 3,
  fill: 0.9,
  weight: 1570,
  bucketTime: 40,
  lap: 2640 * FT,
  speed: 6 * MPH,
  dump: 240,
  spot: 60,
  working: 0.75,
  trucks: 2,
}

it('takes the buckets that a bed needs, and drives a quarter of a lap each way', () => {
  // 10 tons ÷ (98 lb/ft³ × 14 ft³ × 0.9) = 16.2 buckets × 40 s = 10.8 min; 2 × 660 ft at 6 mph = 2.5 min
  const out = haul.compute(job)
  expect(numberOf(out.load) / 60).toBeCloseTo(10.8, 1)
  expect(numberOf(out.trip) / 60).toBeCloseTo(10.8 + 2.5 + 5, 1)
  expect([out.balance, out.spare]).toEqual([2, 3])
})

it('moves no more than the loader loads, however many trucks there are', () => {
  const rate = (trucks: number): number => numberOf(haul.compute({ ...job, trucks }).rate)
  expect(rate(2)).toBeGreaterThan(rate(1))
  expect(rate(9)).toBe(rate(3))
})
