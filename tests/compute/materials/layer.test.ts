import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layerDepth, layerVolume, waterToMoisten } from '../../../src/compute/materials/layer.ts'
import { FEW, feet, inches } from '../support/realistic.ts'

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
