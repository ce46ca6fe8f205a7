import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cushionMass } from '../../../src/compute/cushion/cushion-mass.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, IN, inches, PCF, pcf, TON, YD3 } from '../support/realistic.ts'

const area = 180_000 * FT ** 2

describe('cushion', () => {
  it('weighs an inch of stone dust over a half mile at 788 tons', () => {
    // 180,000 ÷ 12 = 15,000 ft³ = 555.6 yd³; × 105 = 1,575,000 lb
    const { volume, mass } = cushionMass.compute({ area, depth: IN, unitWeight: 105 * PCF })
    expect(numberOf(volume) / YD3).toBeCloseTo(555.56, 2)
    expect(numberOf(mass) / TON).toBeCloseTo(787.5, 6)
  })

  it('grows in step with area and with depth', () => {
    fc.assert(
      fc.property(feet(20, 400), inches(1, 6), pcf(60, 150), (side, depth, unitWeight) => {
        const one = numberOf(cushionMass.compute({ area: side ** 2, depth, unitWeight }).mass)
        expect(
          numberOf(cushionMass.compute({ area: 2 * side ** 2, depth, unitWeight }).mass),
        ).toBeCloseTo(2 * one, 3)
        expect(
          numberOf(cushionMass.compute({ area: side ** 2, depth: depth / 2, unitWeight }).mass),
        ).toBeCloseTo(one / 2, 3)
      }),
      FEW,
    )
  })

  it('is nothing without depth', () => {
    expect(cushionMass.compute({ area, depth: 0, unitWeight: 1680 })).toEqual({
      volume: 0,
      mass: 0,
    })
  })
})
