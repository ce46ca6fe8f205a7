import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { missingDepth, missingDepthUnpriced } from '../../../src/compute/repairs/missing-depth.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, IN, inches, percent, TON } from '../support/realistic.ts'
import { thin } from '../support/thin-cushion.ts'

describe('cushion too thin', () => {
  it('needs 197 tons, or a cut of 0.2 in that swells, for a quarter inch', () => {
    const { missing, mass, loads, cost, cut } = missingDepth.compute({ ...thin, price: 20 / TON })
    expect(numberOf(missing) / IN).toBeCloseTo(0.25, 9)
    expect(numberOf(mass) / TON).toBeCloseTo(196.875, 6)
    expect([loads, cost]).toEqual([10, expect.closeTo(3937.5, 6)])
    // 0.25 ÷ 1.25
    expect(numberOf(cut) / IN).toBeCloseTo(0.2, 9)
  })

  it('gives all but the price where nobody knows it', () => {
    const priced = missingDepth.compute({ ...thin, price: 0.02 })
    const { cost, ...rest } = missingDepthUnpriced.compute(thin)
    expectRefused([cost], /price/)
    expect({ ...rest, cost: priced.cost }).toEqual(priced)
  })

  it('refuses where nothing is missing', () => {
    expectRefused(missingDepthUnpriced.compute({ ...thin, found: IN }), /^no-depth-missing$/)
    expectRefused(missingDepthUnpriced.compute({ ...thin, found: 2 * IN }), /^no-depth-missing$/)
  })

  it('cuts what swells back into the missing depth', () => {
    fc.assert(
      fc.property(inches(1, 3), percent(0, 60), (target, swell) => {
        const { missing, cut } = missingDepthUnpriced.compute({
          ...thin,
          target: target + thin.found,
          swell,
        })
        expect(numberOf(cut) * (1 + swell)).toBeCloseTo(numberOf(missing), 9)
      }),
      FEW,
    )
  })
})
