import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { banking } from '../../../src/compute/oval/banking.ts'
import {
  balancedRadius,
  balancedSpeed,
  sidePush,
  turningForce,
} from '../../../src/compute/oval/curve-balance.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, feet, MPH, mph, percent } from '../support/realistic.ts'

const halfMile = { radius: 226.25 * FT, offset: 3 * FT }

describe('banking', () => {
  it('balances 17 mph with an inch to the foot, and leaves a seventh of the weight at 30 mph on 12.5 %', () => {
    // √(32.174 × 229.25 × 1/12) = 24.79 ft/s; 44² ÷ (32.174 × 229.25) − 0.125 = 0.1375
    expect(
      numberOf(
        banking.compute({ ...halfMile, crossFall: 1 / 12, pace: 30 * MPH })['balanced-speed'],
      ) / MPH,
    ).toBeCloseTo(16.904, 2)
    expect(
      numberOf(banking.compute({ ...halfMile, crossFall: 0.125, pace: 30 * MPH })['side-force']),
    ).toBeCloseTo(0.1375, 3)
  })

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

  it('refuses a pace that the bank more than balances', () => {
    expectRefused(
      [banking.compute({ ...halfMile, crossFall: 0.125, pace: 10 * MPH })['side-force']],
      /more than balances/,
    )
  })

  it('finds the radius back from the speed that it balances', () => {
    fc.assert(
      fc.property(mph(10, 40), percent(1, 16), (speed, slope) => {
        expect(balancedSpeed(slope, balancedRadius(speed, slope))).toBeCloseTo(speed, 9)
      }),
      FEW,
    )
  })

  it('pushes less on a wider turn, and refuses a turn without radius', () => {
    expect(sidePush(13, 100)).toBeLessThan(sidePush(13, 70))
    expect(() => sidePush(13, 0)).toThrow(RangeError)
    expect(() => turningForce(500, Number.NaN, 70)).toThrow(RangeError)
  })
})
