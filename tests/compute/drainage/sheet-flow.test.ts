import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sheetFlow } from '../../../src/compute/drainage/sheet-flow.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, GAL, IN, percent } from '../support/realistic.ts'

const sealed = {
  length: 65 * FT,
  slope: 0.02,
  hourRain: 2 * IN,
  burstShare: 0.29,
  roughness: 0.011,
  runoff: 0.9,
  rail: 100 * FT,
  widthTurns: 70 * FT,
  radius: 226 * FT,
}

describe('rain running to the rail', () => {
  it('reaches it in little over a minute and brings 423 gal/min to 100 ft in the worst five minutes', () => {
    // 0.29 × 2 in × 12 = 6.96 in/h; 0.933 × (0.011 × 65)^0.6 ÷ (6.96^0.4 × 0.02^0.3) = 0.933 × 0.8177 ÷
    // (2.1731 × 0.3092) = 1.135 min
    // 0.9 × 6.96/12 × 65 × 100 = 3,393 ft³/h = 423 gal/min
    const { rate, time, flow } = sheetFlow.compute(sealed)
    expect((numberOf(rate) * 3600) / IN).toBeCloseTo(6.96, 6)
    expect(numberOf(time) / 60).toBeCloseTo(1.1353, 2)
    expect((60 * numberOf(flow)) / GAL).toBeCloseTo(423, 0)
  })

  it('brings more to the rail of a turn, by the ring behind it', () => {
    // A whole circle: π (296² − 226²) ft² behind 2π × 226 ft of rail; 6.96 in/h × 0.9.
    const circle = Math.PI * (296 ** 2 - 226 ** 2)
    const each = (circle / (2 * Math.PI * 226)) * 100
    const gallons = (each * 0.9 * (6.96 / 12) * 1728) / 231 / 60
    const out = sheetFlow.compute(sealed)
    expect((60 * numberOf(out['turn-flow'])) / GAL).toBeCloseTo(gallons, 6)
    expect(numberOf(out['turn-flow'])).toBeGreaterThan(numberOf(out.flow))
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
