import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bankFromCompacted,
  bankFromLoose,
  compactedFromBank,
  looseFromBank,
} from '../../../src/compute/materials/volume-states.ts'
import { FEW, feet, percent } from '../support/realistic.ts'

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
