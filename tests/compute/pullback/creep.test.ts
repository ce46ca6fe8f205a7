import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { creep } from '../../../src/compute/pullback/creep.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, IN, inches, PCF, TON, YD3 } from '../support/realistic.ts'

const day = 86_400

const halfMile = { rail: 2621 * FT, area: 180_000 * FT ** 2, unitWeight: 105 * PCF }

describe('creep to the rail', () => {
  it('brings three quarters of a yard and a ton down in a day', () => {
    // ½ × 2.3 × 1 in² = 1.15 in² = 0.0079861 ft²; × 2621 = 20.93 ft³ = 0.7752 yd³; × 105 = 2,198 lb
    const {
      volume,
      mass,
      depth,
      left: week,
    } = creep.compute({ ...halfMile, width: 2.3 * IN, height: IN, days: 7 * day })
    expect(numberOf(volume) / YD3).toBeCloseTo(0.7752, 4)
    expect(numberOf(mass) / TON).toBeCloseTo(1.099, 3)
    // 20.93 ÷ 180,000 × 12 = 0.0014 in
    expect(numberOf(depth) / IN).toBeCloseTo(0.0014, 4)
    expect(numberOf(week) / YD3).toBeCloseTo(5.4267, 3)
  })

  it('is the same day after day, and grows with the lump', () => {
    fc.assert(
      fc.property(
        inches(1, 4),
        inches(1, 2),
        feet(1500, 5000),
        fc.integer({ min: 1, max: 30 }),
        (width, height, rail, days) => {
          const one = creep.compute({ ...halfMile, rail, width, height, days: day })
          const many = creep.compute({ ...halfMile, rail, width, height, days: days * day })
          expect(one.left).toBe(one.volume)
          expect(numberOf(many.left)).toBeCloseTo(days * numberOf(one.volume), 8)
          expect(
            numberOf(
              creep.compute({ ...halfMile, rail, width: 2 * width, height, days: day }).volume,
            ),
          ).toBeCloseTo(2 * numberOf(one.volume), 9)
        },
      ),
      FEW,
    )
  })
})
