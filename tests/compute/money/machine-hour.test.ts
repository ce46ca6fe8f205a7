import { expect, it } from 'vitest'
import { machineHour } from '../../../src/compute/money/machine-hour.ts'
import { numberOf } from '../support/answers.ts'

const harrow = {
  price: 24_000,
  left: 0.3,
  interest: 0.07,
  years: 10,
  hours: 160 * 3600,
  keeping: 0.01,
  rf1: 0.007,
  rf2: 2,
}

it('adds loss of value, keeping and repairs, over the hours of a year', () => {
  // (24,000 − 7,200) × 0.14238 + 7,200 × 0.07 = 2,896; 0.01 × 15,600 = 156; 24,000 × 0.007 × 1.6² ÷ 10 = 43
  const out = machineHour.compute(harrow)
  expect(numberOf(out.capital)).toBeCloseTo(2895.94, 1)
  expect(numberOf(out.keep)).toBeCloseTo(156, 6)
  expect(numberOf(out.repairs)).toBeCloseTo(43.01, 2)
  expect(numberOf(out.hour) * 3600).toBeCloseTo(3094.95 / 160, 2)
})

it('makes a machine dear by the hour that works little', () => {
  const hour = (hours: number): number =>
    numberOf(machineHour.compute({ ...harrow, hours: hours * 3600 }).hour)
  expect(hour(40)).toBeGreaterThan(3 * hour(160))
})
