import { describe, expect, it } from 'vitest'
import { slopeAngle, slopeOf } from '../../../src/compute/survey/slope.ts'

describe('slopes and trenches', () => {
  it('turn 5 % into 2.9 degrees, not 5', () => {
    expect((180 / Math.PI) * slopeAngle(slopeOf(5, 100))).toBeCloseTo(2.862, 3)
    expect(() => slopeOf(5, 0)).toThrow(RangeError)
  })
})
