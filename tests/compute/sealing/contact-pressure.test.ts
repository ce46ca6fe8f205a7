import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { contactPressure } from '../../../src/compute/sealing/contact-pressure.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, IN, whole } from '../support/realistic.ts'

const PSI = 6894.757293168

const LB = 0.45359237

describe('pressure of a tire against a drum', () => {
  const roller = {
    inflation: 90 * PSI,
    mass: 10_000 * LB,
    share: 0.5,
    width: 6 * FT,
    contact: 3 * IN,
  }

  it('presses 90 psi under a tire and 23 psi under a drum', () => {
    // 5,000 lb on 72 in × 3 in = 216 in²: 23.1 psi; 90 ÷ 23.1 = 3.9
    const { tire, drum, ratio } = contactPressure.compute(roller)
    expect(numberOf(tire) / PSI).toBeCloseTo(90, 9)
    expect(numberOf(drum) / PSI).toBeCloseTo(23.148, 3)
    expect(ratio).toBeCloseTo(3.888, 3)
  })

  it('is the same for a longer stripe as for a wider drum', () => {
    fc.assert(
      fc.property(whole(1, 8), (times) => {
        const wide = contactPressure.compute({ ...roller, width: times * roller.width }).drum
        const long = contactPressure.compute({ ...roller, contact: times * roller.contact }).drum
        expect(numberOf(wide)).toBeCloseTo(numberOf(long), 6)
      }),
      FEW,
    )
  })
})
