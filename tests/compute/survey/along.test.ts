import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lengthAt, railOf } from '../../../src/compute/survey/along.ts'
import { FEW, ovals } from '../support/realistic.ts'

describe('ground along the oval', () => {
  it('adds up over any stations to the lap at that offset', () => {
    fc.assert(
      fc.property(
        ovals,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (oval, offset, shares) => {
          const stops = [...new Set(shares)].sort((a, b) => a - b).map((s) => s * railOf(oval))
          const sum = stops.reduce(
            (total, from, i) =>
              total + lengthAt(oval, from, stops[i + 1] ?? (stops[0] ?? 0) + railOf(oval), offset),
            0,
          )
          expect(sum).toBeCloseTo(2 * oval.straight + 2 * Math.PI * (oval.radius + offset), 6)
        },
      ),
      FEW,
    )
  })
})
