import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  coarserThan,
  coefficients,
  grainSize,
  type Passing,
} from '../../../src/compute/materials/gradation.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, percent } from '../support/realistic.ts'

const mm = (opening: number, passing: number): Passing => ({ opening: opening / 1000, passing })

const curve = [mm(4.75, 0.96), mm(2, 0.7), mm(0.425, 0.35), mm(0.075, 0.12)]

describe('sieve analysis', () => {
  it('reads sizes between sieves on a logarithmic scale', () => {
    // D60: from 0.425 (35 %) to 2 (70 %): 0.425 × (2 ÷ 0.425)^(25 ÷ 35) = 1.285 mm
    expect(1000 * numberOf(grainSize(0.6, curve))).toBeCloseTo(1.285, 3)
    expect(1000 * numberOf(grainSize(0.7, curve))).toBeCloseTo(2, 9)
  })

  it('refuses a share that no sieve reaches', () => {
    expectRefused([grainSize(0.1, curve), grainSize(0.99, curve)], /^sieves-miss-share$/)
    expectRefused([coarserThan(0.00001, curve)], /^size-outside-sieves$/)
  })

  it('throws at a curve that runs backward, and at sizes out of order', () => {
    expect(() => grainSize(0.5, [mm(2, 0.3), mm(4.75, 0.2)])).toThrow(RangeError)
    expect(() => coefficients(0.5, 0.2, 1)).toThrow(RangeError)
  })

  it('finds the share back from the size', () => {
    fc.assert(
      fc.property(percent(13, 95), (wanted) => {
        expect(1 - numberOf(coarserThan(numberOf(grainSize(wanted, curve)), curve))).toBeCloseTo(
          wanted,
          9,
        )
      }),
      FEW,
    )
  })
})
