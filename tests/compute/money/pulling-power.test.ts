import { describe, expect, it } from 'vitest'
import { pullPower, takeOffPower } from '../../../src/compute/money/pulling-power.ts'

describe('pull and power', () => {
  it('asks more of the take-off than reaches the ground', () => {
    expect(takeOffPower(pullPower(10_000, 2), 0.8)).toBeCloseTo(25_000, 6)
    expect(() => takeOffPower(10, 0)).toThrow(RangeError)
  })
})
