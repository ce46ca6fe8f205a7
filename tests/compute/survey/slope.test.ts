import { describe, expect, it } from 'vitest'
import { slopePull } from '../../../src/compute/survey/slope.ts'

describe('a slope', () => {
  // 5 % is a triangle of 5 by 100, whose long side is √10,025 = 100.125: 5 ÷ 100.125 = 0.04994.
  it('pulls with a little less than its rise over run', () =>
    expect(slopePull(0.05)).toBeCloseTo(0.04994, 5))

  it('pulls with seven tenths of the weight at 45 degrees, not with all of it', () =>
    expect(slopePull(1)).toBeCloseTo(Math.SQRT1_2, 12))
})
