import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ridgeWater } from '../../../src/compute/pullback/ridge-water.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, GAL, IN, inches, percent } from '../support/realistic.ts'

const oval = {
  straight: 600 * FT,
  radius: 226.25 * FT,
  crossFallStraights: 0.02,
  crossFallTurns: 0.06,
  widthStraights: 65 * FT,
}

describe('ridge at the rail', () => {
  it('of one inch holds back water 4 ft 2 in wide and some 2,000 gal', () => {
    // 1 in ÷ 2 % = 50 in; ½ (1/12)² (1200 ÷ 0.02 + 1421.57 ÷ 0.06) = 290.6 ft³ = 2,174 gal
    const { 'dam-width': width, 'dam-volume': volume } = ridgeWater.compute({ ...oval, height: IN })
    expect(numberOf(width) / FT).toBeCloseTo(4.1667, 4)
    expect(numberOf(volume) / GAL).toBeCloseTo(2173.9, 0)
  })

  it('refuses water that would stand over the whole width', () => {
    const { taken: _, ...held } = ridgeWater.compute({
      ...oval,
      crossFallStraights: 0.002,
      height: 2 * IN,
    })
    expectRefused(held, /^water-over-edge$/)
  })

  it('holds four times the water at twice the height, and less on a steeper track', () => {
    fc.assert(
      fc.property(inches(1, 2), percent(2, 6), (height, crossFallStraights) => {
        const volume = (change: object): number =>
          numberOf(
            ridgeWater.compute({ ...oval, height, crossFallStraights, ...change })['dam-volume'],
          )
        expect(volume({ height: 2 * height })).toBeCloseTo(4 * volume({}), 6)
        expect(volume({ crossFallStraights: crossFallStraights + 0.01 })).toBeLessThan(volume({}))
      }),
      FEW,
    )
  })
})
