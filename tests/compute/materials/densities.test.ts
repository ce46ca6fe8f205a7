import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  compactionPoint,
  relativeCompaction,
  relativeDensity,
  voidRatioAt,
} from '../../../src/compute/materials/compaction.ts'
import {
  circleStress,
  cornerStress,
  pointLoadFor,
  pointStress,
  tireContact,
} from '../../../src/compute/materials/ground-stress.ts'
import { layerDepth, layerVolume, waterToMoisten } from '../../../src/compute/materials/layer.ts'
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
import { conePile, windrowPile } from '../../../src/compute/materials/pile.ts'
import {
  bankFromCompacted,
  bankFromLoose,
  compactedFromBank,
  looseFromBank,
} from '../../../src/compute/materials/volume-states.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, feet, inches, percent } from '../support/realistic.ts'

describe('volume states', () => {
  it('come back to the bank', () => {
    fc.assert(
      fc.property(feet(1, 500), percent(0, 60), percent(70, 130), (bank, swell, factor) => {
        expect(bankFromLoose(looseFromBank(bank, swell), swell)).toBeCloseTo(bank, 9)
        expect(bankFromCompacted(compactedFromBank(bank, factor), factor)).toBeCloseTo(bank, 9)
      }),
      FEW,
    )
  })

  it('throw at a volume below zero and a factor of nothing', () => {
    expect(() => looseFromBank(-1, 0.2)).toThrow(RangeError)
    expect(() => bankFromCompacted(1, 0)).toThrow(RangeError)
  })
})

describe('layers', () => {
  it('come back from depth to mass', () => {
    fc.assert(
      fc.property(feet(10, 400), inches(1, 6), (side, depth) => {
        expect(layerDepth(1700 * layerVolume(side ** 2, depth), 1700, side ** 2)).toBeCloseTo(
          depth,
          9,
        )
      }),
      FEW,
    )
  })

  it('need water to go up and lose it to go down', () => {
    // 10 m³ × 1,700 kg/m³ × 3 % = 510 kg
    expect(waterToMoisten(10, 1700, 0.08, 0.05)).toBeCloseTo(510, 9)
    expect(waterToMoisten(10, 1700, 0.05, 0.08)).toBeCloseTo(-510, 9)
    expect(() => waterToMoisten(10, 0, 0.08, 0.05)).toThrow(RangeError)
  })
})

describe('piles', () => {
  it('are cones where a windrow has no crest', () => {
    expect(windrowPile(6, 0, 0.6)).toEqual(conePile(6, 0.6))
  })

  it('grow with the cube of their width, and refuse an upright slope', () => {
    expect(conePile(8, 0.6).volume).toBeCloseTo(8 * conePile(4, 0.6).volume, 9)
    expect(() => conePile(8, Math.PI / 2)).toThrow(RangeError)
  })
})

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

describe('compaction', () => {
  it('throws at a sample that gains weight in the oven', () => {
    expect(() =>
      compactionPoint({ net: 2, mold: 0.001, wetAndCan: 0.4, dryAndCan: 0.5, can: 0.1 }),
    ).toThrow(RangeError)
  })

  it('reaches all of itself, and comes back from relative density', () => {
    expect(relativeCompaction(1900, 1900)).toBe(1)
    expect(numberOf(relativeDensity(voidRatioAt(0.78, 0.46, 0.75), 0.46, 0.75))).toBeCloseTo(
      0.78,
      9,
    )
    expectRefused([relativeDensity(0.9, 0.46, 0.75)], /outside/)
  })
})

describe('stress in the ground', () => {
  it('comes back from stress to load', () => {
    expect(pointLoadFor(pointStress(50_000, 2, 1), 2, 1)).toBeCloseTo(50_000, 6)
    expect(() => pointStress(50_000, 0, 1)).toThrow(RangeError)
  })

  it('is a quarter of the pressure near the surface under a corner, and all of it under the middle of a circle', () => {
    expect(cornerStress(100, 1, 1, 0.001)).toBeCloseTo(25, 3)
    expect(circleStress(100, 1, 0.001)).toBeCloseTo(100, 3)
  })

  it('under a small circle is that of a point load far down', () => {
    expect(circleStress(1000, 0.1, 5)).toBeCloseTo(pointStress(1000 * Math.PI * 0.01, 5, 0), 2)
  })

  it('under a tire spreads over load by pressure', () => {
    expect(tireContact(20_000, 400_000).area).toBeCloseTo(0.05, 9)
    expect(() => tireContact(20_000, 0)).toThrow(RangeError)
  })
})
