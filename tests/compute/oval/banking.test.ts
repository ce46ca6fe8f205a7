import { describe, expect, it } from 'vitest'
import { banking } from '../../../src/compute/oval/banking.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FT, MPH } from '../support/realistic.ts'

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

  it('refuses a pace that the bank more than balances', () => {
    expectRefused(
      [banking.compute({ ...halfMile, crossFall: 0.125, pace: 10 * MPH })['side-force']],
      /^bank-outdoes-turn$/,
    )
  })
})
