import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { simpsonArea, trapezoidArea } from '../../../src/compute/survey/offset-area.ts'
import { coordinateArea } from '../../../src/compute/survey/section-area.ts'
import { FEW, feet, whole } from '../support/realistic.ts'

describe('areas', () => {
  it('by offsets are exact for a straight edge, both ways', () => {
    fc.assert(
      fc.property(feet(1, 30), feet(0, 3), whole(3, 9), (start, step, count) => {
        const offsets = Array.from({ length: count }, (_, i) => start + i * step)
        expect(simpsonArea(offsets, 5)).toBeCloseTo(trapezoidArea(offsets, 5), 6)
      }),
      FEW,
    )
  })

  it('throw with too few offsets or corners', () => {
    expect(() => trapezoidArea([1], 5)).toThrow(RangeError)
    expect(() => simpsonArea([1, 2], 5)).toThrow(RangeError)
    expect(() =>
      coordinateArea([
        [0, 0],
        [1, 1],
      ]),
    ).toThrow(RangeError)
  })
})
