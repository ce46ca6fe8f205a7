import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { excess, excessHauled } from '../../../src/compute/repairs/excess.ts'
import { missingDepthUnpriced } from '../../../src/compute/repairs/missing-depth.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, IN, inches, PCF, TON, YD3 } from '../support/realistic.ts'
import { area, thin } from '../support/thin-cushion.ts'

const deep = {
  area,
  found: 1.5 * IN,
  target: IN,
  worked: 105 * PCF,
  moisture: 0,
  looseWeight: 100 * PCF,
  edge: 3000 * FT,
  repose: (35 * Math.PI) / 180,
  load: 20 * TON,
  grading: 7200,
  bucket: YD3,
  bucketTime: 60,
  loaders: 1,
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

  it('takes as long as the slower of loader and trucks', () => {
    // 393.75 tons at 43 tons an hour, the pace of one truck: 9.157 h.
    const answers = excessHauled.compute({ ...deep, rate: (43 * TON) / 3600 })
    expect(numberOf(answers.loading) / 3600).toBeCloseTo(393.75 / 43, 9)
    expect(numberOf(answers.time)).toBeCloseTo(7200 + numberOf(answers.loading), 6)
    expect(answers.mass).toBe(excess.compute(deep).mass)
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
    expectRefused(excess.compute({ ...deep, found: IN }), /^no-excess$/)
    expectRefused(excess.compute({ ...deep, found: 0.5 * IN }), /^no-excess$/)
  })
})

describe('cushion too thin', () => {
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
