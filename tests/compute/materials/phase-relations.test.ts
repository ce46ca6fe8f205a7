import { describe, expect, it } from 'vitest'
import { dryDensity } from '../../../src/compute/materials/phase-relations.ts'

describe('dry density', () => {
  // A liter of 2.0 kg wet at 25 %: 1.6 kg of grains and 0.4 kg of water, which is a quarter of 1.6.
  it('leaves the water out', () => expect(dryDensity(2000, 0.25)).toBe(1600))

  it('throws at soil without weight', () => expect(() => dryDensity(0, 0.1)).toThrow(RangeError))
})
