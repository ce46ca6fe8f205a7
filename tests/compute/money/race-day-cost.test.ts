import { expect, it } from 'vitest'
import { raceDayCost } from '../../../src/compute/money/race-day-cost.ts'
import { numberOf } from '../support/answers.ts'

const h = 3600
const day = {
  crew: 50 * h,
  wage: 22 / h,
  tax: 0.0765,
  pullBack: 140,
  harrow: 50,
  harrowings: 2,
  harrowLaps: 8,
  lapsBetween: 1,
  lapsInBreak: 0,
  breaks: 0,
  races: 9,
  round: 60,
  roundLoads: 4,
  loads: 12,
  water: 30,
  waterPrice: 2,
  days: 3,
  pullFuel: 0.02,
  harrowFuel: 0.01,
  roundFuel: 0.01,
  fuelPrice: 1000,
}

it('pays everybody for all hours of the rota, not for driving alone', () => {
  // 50 h × 22 × 1.0765
  const out = raceDayCost.compute(day)
  expect(numberOf(out.hours) / h).toBe(50)
  expect(numberOf(out.labor)).toBeCloseTo(1184.15, 2)
})

it('counts the laps between races as parts of a harrowing', () => {
  // 8 intervals of one lap of 8: one harrowing more.
  const out = raceDayCost.compute(day)
  expect(out['whole-harrowings']).toBe(3)
  expect(out.machines).toBe(140 + 150 + 180)
  expect(numberOf(out.day)).toBeCloseTo(1184.15 + 470 + 60, 2)
  expect(numberOf(out.fuel)).toBeCloseTo(3 * (0.02 + 0.03 + 0.03), 9)
})

it('counts the laps in breaks, which stand in place of intervals', () => {
  // 9 races with 2 breaks: 6 intervals of one lap and 2 breaks of three are 12 laps of 8.
  const out = raceDayCost.compute({ ...day, breaks: 2, lapsInBreak: 3 })
  expect(out['whole-harrowings']).toBe(3.5)
})

it('still gives the people where no machine has a price', () => {
  const out = raceDayCost.compute({ ...day, pullBack: 0, harrow: 0, round: 0, waterPrice: 0 })
  expect(out.day).toBe(out.labor)
  expect(out.machines).toEqual({ refused: 'no-price' })
})

it('counts water from an own pond as free, and water without a price not at all', () => {
  const own = raceDayCost.compute({ ...day, waterPrice: 0 })
  expect(own['day-water']).toBe(0)
  expect(own.water).toBe(0)
  // Where nobody gives a price, no water is counted.
  const unknown = raceDayCost.compute({ ...day, water: 0, waterPrice: 0 })
  expect(unknown['day-water']).toEqual({ refused: 'no-water-counted' })
  expect(own.day).toBe(unknown.day)
})

it('says that fuel is not known, and never that none is burned', () => {
  const out = raceDayCost.compute({ ...day, pullFuel: 0, harrowFuel: 0, roundFuel: 0 })
  expect(out.fuel).toEqual({ refused: 'no-fuel' })
})
