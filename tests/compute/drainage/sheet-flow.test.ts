import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sheetFlow } from '../../../src/compute/drainage/sheet-flow.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, GAL, IN, percent } from '../support/realistic.ts'

const sealed = {
  length: 65 * FT,
  slope: 0.02,
  rain: (2 * IN) / 3600,
  roughness: 0.011,
  runoff: 0.9,
  rail: 100 * FT,
}

describe('rain running to the rail', () => {
  it('reaches it in two minutes and brings 122 gal/min to 100 ft in a cloudburst', () => {
    // 0.9395 × (0.011 × 65)^0.6 ÷ (2^0.4 × 0.02^0.3) = 0.9395 × 0.8176 ÷ (1.3195 × 0.3092) = 1.883
    // min
    // 0.9 × 2/12 × 65 × 100 = 975 ft³/h = 121.6 gal/min
    const { time, flow } = sheetFlow.compute(sealed)
    expect(numberOf(time) / 60).toBeCloseTo(1.8825, 2)
    expect((60 * numberOf(flow)) / GAL).toBeCloseTo(121.56, 1)
  })

  it('is the kinematic wave of Manning: in SI, the constant is one', () => {
    fc.assert(
      fc.property(feet(20, 150), percent(1, 8), (length, slope) => {
        const { time } = sheetFlow.compute({ ...sealed, length, slope })
        expect(numberOf(time)).toBeCloseTo(
          (sealed.roughness * length) ** 0.6 / (sealed.rain ** 0.4 * slope ** 0.3),
          6,
        )
      }),
      FEW,
    )
  })

  it('takes longer over a wider track, and less on a steeper one; flow adds up along the rail', () => {
    fc.assert(
      fc.property(feet(20, 100), percent(1, 8), (length, slope) => {
        const at = (change: object): { time: number; flow: number } =>
          sheetFlow.compute({ ...sealed, length, slope, ...change }) as {
            time: number
            flow: number
          }
        expect(at({ length: length + FT }).time).toBeGreaterThan(at({}).time)
        expect(at({ slope: slope + 0.01 }).time).toBeLessThan(at({}).time)
        expect(at({ rail: 2 * sealed.rail }).flow).toBeCloseTo(2 * at({}).flow, 9)
      }),
      FEW,
    )
  })
})
