import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  fresnel,
  spiraledTurn,
  transitionSpiral,
} from '../../../src/compute/oval/transition-spiral.ts'
import { FEW, feet } from '../support/realistic.ts'

describe('transition spirals', () => {
  it('agrees with Fresnel integrals summed in small steps', () => {
    // Midpoint rule over 20,000 steps, good to 1e-9.
    const sum = (f: (t: number) => number, x: number): number => {
      const n = 20_000
      return (
        Array.from({ length: n }, (_, i) => f(((i + 0.5) * x) / n)).reduce((a, b) => a + b, 0) *
        (x / n)
      )
    }
    expect(fresnel(1.3).c).toBeCloseTo(
      sum((t) => Math.cos((Math.PI / 2) * t * t), 1.3),
      8,
    )
    expect(fresnel(1.3).s).toBeCloseTo(
      sum((t) => Math.sin((Math.PI / 2) * t * t), 1.3),
      8,
    )
  })

  it('is nothing at its start and refused where it is not worked out', () => {
    expect(fresnel(0)).toEqual({ c: 0, s: 0 })
    expect(() => fresnel(3.01)).toThrow(RangeError)
    expect(() => transitionSpiral(0, 70)).toThrow(RangeError)
    expect(() => transitionSpiral(60, Number.NaN)).toThrow(RangeError)
  })

  it('scales as a whole, and a chord is shorter than its curve', () => {
    fc.assert(
      fc.property(feet(40, 250), feet(150, 450), (length, radius) => {
        const one = transitionSpiral(length, radius)
        const two = transitionSpiral(2 * length, 2 * radius)
        expect(two.angle).toBeCloseTo(one.angle, 12)
        expect(two.y).toBeCloseTo(2 * one.y, 8)
        expect(one.chord).toBeLessThan(length)
        expect(one.shift).toBeGreaterThan(0)
      }),
      FEW,
    )
  })

  it('makes a turn longer by one transition', () => {
    expect(spiraledTurn(70, 45) - spiraledTurn(70, 30)).toBeCloseTo(15, 9)
  })
})
