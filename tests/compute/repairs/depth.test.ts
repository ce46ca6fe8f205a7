import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { baseCut } from '../../../src/compute/repairs/base-cut.ts'
import { excess } from '../../../src/compute/repairs/excess.ts'
import { missingDepth, missingDepthUnpriced } from '../../../src/compute/repairs/missing-depth.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, IN, inches, PCF, percent, TON, YD3 } from '../support/realistic.ts'

const area = 180_000 * FT ** 2
const deep = {
  area,
  found: 1.5 * IN,
  target: IN,
  worked: 105 * PCF,
  looseWeight: 100 * PCF,
  edge: 3000 * FT,
  repose: (35 * Math.PI) / 180,
  load: 20 * TON,
  grading: 7200,
  bucket: YD3,
  bucketTime: 60,
  loaders: 1,
}
const thin = {
  area,
  target: IN,
  found: 0.75 * IN,
  unitWeight: 105 * PCF,
  load: 20 * TON,
  swell: 0.25,
}

describe('cushion too deep', () => {
  it('moves 278 yd³ and 394 tons for half an inch', () => {
    // 180,000 ÷ 24 = 7,500 ft³ = 277.8 yd³; × 105 ÷ 2000 = 393.75 tons; loose 7,875 ft³ = 291.7 yd³
    // → 292 buckets of a minute
    const answers = excess.compute(deep)
    expect(numberOf(answers.volume) / YD3).toBeCloseTo(277.78, 2)
    expect(numberOf(answers.mass) / TON).toBeCloseTo(393.75, 6)
    expect(answers.loads).toBe(20)
    expect(numberOf(answers.time)).toBe(7200 + 292 * 60)
    // 7,875 ÷ 3,000 = 2.625 ft² = h² ÷ tan 35°; h = √(2.625 × 0.7002) = 1.356 ft
    expect(numberOf(answers['windrow-height']) / FT).toBeCloseTo(1.3558, 3)
  })

  it('piles a windrow that holds what comes off', () => {
    fc.assert(
      fc.property(inches(2, 4), (found) => {
        const { heap, 'windrow-height': h } = excess.compute({ ...deep, found })
        const base = (2 * numberOf(h)) / Math.tan(deep.repose)
        expect(0.5 * base * numberOf(h) * deep.edge).toBeCloseTo(numberOf(heap), 4)
      }),
      FEW,
    )
  })

  it('refuses a cushion that is at its depth or thinner', () => {
    expectRefused(excess.compute({ ...deep, found: IN }), /no deeper/)
    expectRefused(excess.compute({ ...deep, found: 0.5 * IN }), /no deeper/)
  })
})

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
    expectRefused(missingDepthUnpriced.compute({ ...thin, found: IN }), /no depth/)
    expectRefused(missingDepthUnpriced.compute({ ...thin, found: 2 * IN }), /no depth/)
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

  it('takes the same cut as a stopgap that gains one step', () => {
    expect(baseCut.compute({ gain: thin.target - thin.found, swell: thin.swell }).cut).toBeCloseTo(
      numberOf(missingDepthUnpriced.compute(thin).cut),
      12,
    )
  })

  it('and too deep are one question: what is taken off equals what would be missing', () => {
    fc.assert(
      fc.property(inches(1, 2), inches(1, 2), (low, more) => {
        const off = excess.compute({ ...deep, target: low, found: low + more }).mass
        const on = missingDepthUnpriced.compute({ ...thin, target: low + more, found: low }).mass
        expect(numberOf(off)).toBeCloseTo(numberOf(on), 4)
      }),
      FEW,
    )
  })
})
