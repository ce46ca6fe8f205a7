import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bulkDensity,
  dryDensity,
  moistureFromProbe,
  porosity,
  saturation,
  voidRatio,
  voidRatioFromPorosity,
  zeroAirVoids,
} from '../../../src/compute/materials/phase-relations.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, percent } from '../support/realistic.ts'

describe('phases of a soil', () => {
  it('come back from void ratio to porosity and density', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1400, max: 2200 }), percent(0, 5), (wet, w) => {
        const dry = dryDensity(wet, w)
        const e = numberOf(voidRatio(dry, 2.7, 1000))
        expect(voidRatioFromPorosity(porosity(e))).toBeCloseTo(e, 9)
        expect(bulkDensity(2.7, numberOf(saturation(w, 2.7, e)), e, 1000)).toBeCloseTo(wet, 6)
      }),
      FEW,
    )
  })

  it('never pass the line of no air', () => {
    const e = numberOf(voidRatio(zeroAirVoids(2.7, 0.1, 1000), 2.7, 1000))
    expect(numberOf(saturation(0.1, 2.7, e))).toBeCloseTo(1, 9)
  })

  it('refuse a soil as dense as stone and more water than voids', () => {
    expectRefused([voidRatio(2700, 2.7, 1000), saturation(0.5, 2.7, 0.4)], /grains|water/)
    expect(() => dryDensity(0, 0.1)).toThrow(RangeError)
  })

  it('give less by mass than a probe reads by volume, in soil heavier than water', () => {
    expect(moistureFromProbe(0.2, 1600, 1000)).toBeCloseTo(0.125, 9)
  })
})
