import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { taskCost } from '../../../src/compute/money/task-cost.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, GAL, whole } from '../support/realistic.ts'

const h = 3600
const rolling = {
  time: 0.85 * h,
  machines: 2,
  rate: 60 / h,
  fuelRate: (4 * GAL) / h,
  fuelPrice: 4.1 / GAL,
  labor: 22 / h,
  tax: 0.0765,
}

describe('what a task costs', () => {
  it('is machines, fuel, and drivers with the tax on their wages: worked by hand', () => {
    // 2 trucks × 0.85 h = 1.7 h: $102, 6.8 gal at $4.10 = $27.88; 1.7 × 22 × 1.0765 = $40.26.
    const out = taskCost.compute(rolling)
    expect(numberOf(out.fuel) / GAL).toBeCloseTo(6.8, 9)
    expect(numberOf(out.machine)).toBeCloseTo(129.88, 9)
    expect(numberOf(out.cost)).toBeCloseTo(129.88 + 40.2611, 6)
  })

  it('adds up over time', () => {
    fc.assert(
      fc.property(whole(1, 600), whole(1, 600), (first, second) => {
        const cost = (minutes: number): number =>
          numberOf(taskCost.compute({ ...rolling, time: minutes * 60 }).cost)
        expect(cost(first) + cost(second)).toBeCloseTo(cost(first + second), 6)
      }),
      FEW,
    )
  })
})
