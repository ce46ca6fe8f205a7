import { describe, expect, it } from 'vitest'
import { haulPull, rollingShare } from '../../../src/compute/money/resistance.ts'

describe('pull and power', () => {
  it('rolls at 2 % on a hard road and climbs on top of that', () => {
    expect(rollingShare(0)).toBeCloseTo(0.02, 9)
    expect(haulPull(1000, rollingShare(0), 0.05)).toBeCloseTo(70, 9)
    expect(() => rollingShare(-1)).toThrow(RangeError)
  })
})
