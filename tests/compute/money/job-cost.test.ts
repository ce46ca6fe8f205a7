import { describe, expect, it } from 'vitest'
import {
  costOf,
  jobTime,
  markUp,
  sumOfCosts,
  unitCost,
} from '../../../src/compute/money/job-cost.ts'

describe('cost', () => {
  it('of a job is its time at its price, and of a unit the same over the amount', () => {
    const time = jobTime(300, 2)
    expect(costOf(time, 0.02) / 300).toBeCloseTo(unitCost(0.02, 2), 12)
    expect(sumOfCosts([])).toBe(0)
    expect(() => sumOfCosts([1, -1])).toThrow(RangeError)
  })

  it('is marked up in order', () => {
    // 100 + 10 = 110; 5 % of that = 5.50
    expect(markUp(100, 0.1, 0.05)).toEqual({
      overhead: 10,
      contract: 110,
      administration: 5.5,
      total: 115.5,
    })
  })
})
