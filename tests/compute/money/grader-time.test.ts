import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { graderTime, meanPassSpeed } from '../../../src/compute/money/grader-time.ts'
import { FEW, feet, mph } from '../support/realistic.ts'

describe('grader', () => {
  it('takes the sum of its operations, at the harmonic mean of their speeds', () => {
    fc.assert(
      fc.property(
        fc.array(mph(2, 8), { minLength: 1, maxLength: 6 }),
        feet(500, 5000),
        (speeds, distance) => {
          const hours = graderTime(
            speeds.map((speed) => ({ passes: 1, distance, speed })),
            0.6,
          )
          const mean = graderTime(
            [{ passes: speeds.length, distance, speed: meanPassSpeed(speeds) }],
            0.6,
          )
          expect(hours).toBeCloseTo(mean, 5)
        },
      ),
      FEW,
    )
  })

  it('throws at no speed and no passes at all', () => {
    expect(() => graderTime([{ passes: 1, distance: 10, speed: 0 }], 0.6)).toThrow(RangeError)
    expect(() => meanPassSpeed([])).toThrow(RangeError)
  })
})
