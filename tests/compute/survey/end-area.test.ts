import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { endAreaVolume } from '../../../src/compute/survey/end-area.ts'
import { FEW, feet } from '../support/realistic.ts'

describe('volumes between sections', () => {
  it('take half as much again as a pyramid where a section shrinks to nothing', () => {
    // A pyramid on 6 m², 10 m long, holds 6 × 10 ÷ 3 = 20 m³.
    expect(endAreaVolume(6, 0, 10)).toBe(1.5 * 20)
  })

  it('agree for a prism and add up along it', () => {
    fc.assert(
      fc.property(feet(1, 60), feet(1, 60), feet(1, 400), (a, b, length) => {
        expect(endAreaVolume(a, a, length)).toBeCloseTo(a * length, 6)
        const middle = (a + b) / 2
        expect(
          endAreaVolume(a, middle, length / 2) + endAreaVolume(middle, b, length / 2),
        ).toBeCloseTo(endAreaVolume(a, b, length), 6)
      }),
      FEW,
    )
  })

  it('throw at a section below zero', () => {
    expect(() => endAreaVolume(-1, 2, 3)).toThrow(RangeError)
  })
})
