import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  evenCost,
  materialCost,
  seasonCost,
  seasonCostUnset,
  takeOffCost,
} from '../../../src/compute/money/season-cost.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { GAL, TON } from '../support/realistic.ts'

const h = 3600
const day = 86_400

const season = {
  fair: 5000,
  before: 30 * day,
  harrow: 75,
  round: 130,
  water: 7000 * GAL,
  waterPrice: 0.005 / GAL,
  shaping: 660,
  takeOff: 2650,
  material: 0,
  grit: 3400,
  moving: 1150,
  budget: 6500,
}

describe('cost of a season', () => {
  it('is that of race days, of getting ready and of cures, against what is set aside', () => {
    // A day: 75 + 130 + 7,000 × 0.005 = 240; ready: 30 × 240 + 660; cures: 2,650 + 3,400 + 1,150.
    const answers = seasonCost.compute(season)
    expect(numberOf(answers.daily)).toBeCloseTo(240, 9)
    expect(numberOf(answers.ready)).toBeCloseTo(7860, 9)
    expect(numberOf(answers.cures)).toBe(7200)
    expect(numberOf(answers.total)).toBeCloseTo(20_060, 9)
    expect(numberOf(answers.short)).toBeCloseTo(13_560, 9)
  })

  it('says that enough is set aside, that nobody has said what is, or that nothing has a price', () => {
    expectRefused([seasonCost.compute({ ...season, budget: 30_000 }).short], /budget-enough/)
    expectRefused([seasonCostUnset.compute(season).short], /no-budget/)
    // Nothing set aside is an amount: all of it is still to find.
    const none = seasonCost.compute({ ...season, budget: 0 })
    expect(none.short).toBe(none.total)
    expect(seasonCostUnset.compute(season).total).toBe(none.total)
    const nothing = Object.fromEntries(Object.keys(season).map((k) => [k, 0])) as typeof season
    const { short: _, ...rest } = seasonCostUnset.compute(nothing)
    expectRefused(rest, /no-price/)
  })

  it('never falls when a cure gets a price', () => {
    const dollars = fc.integer({ min: 0, max: 50_000 })
    fc.assert(
      fc.property(dollars, dollars, (grit, more) => {
        const total = (g: number) => numberOf(seasonCost.compute({ ...season, grit: g }).total)
        expect(total(grit + more) - total(grit)).toBeCloseTo(more, 6)
      }),
    )
  })
})

describe('cost of a cure', () => {
  it('is the sum of its machines, or the order at its price', () => {
    expect(takeOffCost.compute({ blading: 660, loading: 615, hauling: 1385 }).cost).toBe(2660)
    // 149 tons at $23.
    const order = { order: 149 * TON, price: 23 / TON }
    expect(numberOf(materialCost.compute(order).cost)).toBeCloseTo(3427, 6)
  })

  it('counts two people and a blade while the cushion is uneven, and nothing after', () => {
    const x = {
      time: 12 * h,
      people: 2,
      wage: 22 / h,
      tax: 0.0765,
      rate: 38 / h,
      fuelRate: (2.6 * GAL) / h,
      fuelPrice: 4.1 / GAL,
      share: 0.33,
      enough: 0.8,
    }
    // 2 × 12 × 22 × 1.0765 = 568.39; 12 × (38 + 2.6 × 4.1) = 583.92.
    const answers = evenCost.compute(x)
    expect(numberOf(answers.labor)).toBeCloseTo(568.392, 6)
    expect(numberOf(answers.machine)).toBeCloseTo(583.92, 6)
    expect(numberOf(answers.cost)).toBeCloseTo(1152.312, 6)
    expectRefused(evenCost.compute({ ...x, share: 0.8 }), /even-enough/)
  })
})
