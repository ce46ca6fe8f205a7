import { describe, expect, it } from 'vitest'
import { pylonCount } from '../../../src/compute/oval/pylon-count.ts'
import { FT } from '../support/realistic.ts'

const straight = 600 * FT

const radius = 226.25 * FT

describe('lengths around an oval', () => {
  it('counts 36 pylons on the turns and 20 on the straights of a half mile', () => {
    // 2π × 226.25 ÷ 40 = 35.5, 1200 ÷ 60 = 20
    expect(pylonCount(straight, radius, 40 * FT, 60 * FT)).toBe(56)
    expect(() => pylonCount(straight, radius, 0, 60 * FT)).toThrow(RangeError)
  })
})
