import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  capitalRecovery,
  recoveryFactor,
  repairShare,
} from '../../../src/compute/money/machine-cost.ts'
import { FEW, whole } from '../support/realistic.ts'

describe('cost', () => {
  it('of money comes back from the yearly share', () => {
    fc.assert(
      fc.property(whole(1, 20), whole(0, 12), (years, percent) => {
        const i = percent / 100
        const paid = Array.from(
          { length: years },
          (_, k) => recoveryFactor(i, years) / (1 + i) ** (k + 1),
        ).reduce((a, b) => a + b, 0)
        expect(paid).toBeCloseTo(1, 9)
      }),
      FEW,
    )
  })

  it('of a machine that keeps its price is the interest', () => {
    expect(capitalRecovery(1000, 1000, 0.06, 10)).toBeCloseTo(60, 9)
    expect(() => capitalRecovery(1000, 1200, 0.06, 10)).toThrow(RangeError)
    expect(repairShare(0, 0.007, 2)).toBe(0)
  })
})
