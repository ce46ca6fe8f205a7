import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { banking } from '../../../src/compute/oval/banking.ts'
import { balancedSpeed, sidePush } from '../../../src/compute/oval/curve-balance.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, feet, percent } from '../support/realistic.ts'

describe('banking', () => {
  it('leaves nothing at the balanced speed', () => {
    fc.assert(
      fc.property(feet(120, 500), percent(1, 16), (radius, crossFall) => {
        const pace = balancedSpeed(crossFall, radius)
        const left = banking.compute({ radius, offset: 0, crossFall, pace: pace * (1 + 1e-12) })[
          'side-force'
        ]
        expect(numberOf(left)).toBeCloseTo(0, 9)
      }),
      FEW,
    )
  })

  it('is the slope that balances the push of its own speed', () => {
    fc.assert(
      fc.property(feet(120, 500), percent(1, 16), (radius, slope) => {
        expect(sidePush(balancedSpeed(slope, radius), radius)).toBeCloseTo(slope, 9)
      }),
      FEW,
    )
  })

  it('pushes less on a wider turn, and refuses a turn without radius', () => {
    expect(sidePush(13, 100)).toBeLessThan(sidePush(13, 70))
    expect(() => sidePush(13, 0)).toThrow(RangeError)
    expect(() => sidePush(Number.NaN, 70)).toThrow(RangeError)
  })
})
