import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { refuse } from '../../../src/compute/calculation.ts'
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
    diameter: 48 * IN,
    leastSink: (3 / 16) * IN,
    mostSink: (1 / 4) * IN,
  }

  it('presses 90 psi under a tire and 23 psi under a drum that has sunk 3/16 in', () => {
    // √(48 × 3/16) = 3 in; 5,000 lb on 72 in × 3 in = 216 in²: 23.1 psi; 90 ÷ 23.1 = 3.9
    const { tire, short, hardest, least } = contactPressure.compute(roller)
    expect(numberOf(tire) / PSI).toBeCloseTo(90, 9)
    expect(numberOf(short) / IN).toBeCloseTo(3, 9)
    expect(numberOf(hardest) / PSI).toBeCloseTo(23.148, 3)
    expect(least).toBeCloseTo(3.888, 3)
  })

  it('touches 1.7 to 3.5 in under a drum of 48 in that sinks 1/16 to 1/4 in', () => {
    // √(48 ÷ 16) = √3 and √(48 ÷ 4) = √12
    const { short, long } = contactPressure.compute({ ...roller, leastSink: IN / 16 })
    expect(numberOf(short) / IN).toBeCloseTo(1.732, 3)
    expect(numberOf(long) / IN).toBeCloseTo(3.464, 3)
  })

  it('has no answer where the most is smaller than the least', () => {
    const { most } = contactPressure.compute({ ...roller, mostSink: IN / 8 })
    expect(most).toEqual(refuse('sinks-out-of-order'))
  })

  it('is the same for a longer stripe as for a wider drum', () => {
    fc.assert(
      fc.property(whole(1, 2), (times) => {
        const wide = contactPressure.compute({ ...roller, width: times * roller.width }).softest
        const deep = { ...roller, mostSink: times ** 2 * roller.mostSink }
        const long = contactPressure.compute(deep).softest
        expect(numberOf(wide)).toBeCloseTo(numberOf(long), 6)
      }),
      FEW,
    )
  })
})
