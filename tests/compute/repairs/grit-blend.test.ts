import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gritBlend } from '../../../src/compute/repairs/grit-blend.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, percent, TON } from '../support/realistic.ts'

const worn = { cushion: 800 * TON, found: 0.2, target: 0.3, stone: 1, moisture: 0, load: 20 * TON }

describe('grit', () => {
  it('comes back from 20 to 30 % of 800 tons with 114 tons of clean stone', () => {
    // 800 × 0.1 ÷ 0.7 = 114.29; ÷ 20 = 5.7 → 6
    const { add, loads } = gritBlend.compute(worn)
    expect(numberOf(add) / TON).toBeCloseTo(114.286, 3)
    expect(loads).toBe(6)
  })

  it('has the wanted share after mixing', () => {
    fc.assert(
      fc.property(percent(1, 25), percent(26, 60), percent(70, 100), (found, target, stone) => {
        const added = numberOf(gritBlend.compute({ ...worn, found, target, stone }).add)
        expect((found * worn.cushion + stone * added) / (worn.cushion + added)).toBeCloseTo(
          target,
          9,
        )
      }),
      FEW,
    )
  })

  it('refuses a cushion that has its grit, and stone that has not', () => {
    expectRefused(gritBlend.compute({ ...worn, found: 0.3 }), /^grit-enough$/)
    expectRefused(gritBlend.compute({ ...worn, stone: 0.3 }), /^stone-too-fine$/)
  })
})
