import { describe, expect, it } from 'vitest'
import {
  compactionPoint,
  relativeCompaction,
  relativeDensity,
  voidRatioAt,
} from '../../../src/compute/materials/compaction.ts'
import { expectRefused, numberOf } from '../support/answers.ts'

describe('compaction', () => {
  it('throws at a sample that gains weight in the oven', () => {
    expect(() =>
      compactionPoint({ net: 2, mold: 0.001, wetAndCan: 0.4, dryAndCan: 0.5, can: 0.1 }),
    ).toThrow(RangeError)
  })

  it('reaches all of itself, and comes back from relative density', () => {
    expect(relativeCompaction(1900, 1900)).toBe(1)
    expect(numberOf(relativeDensity(voidRatioAt(0.78, 0.46, 0.75), 0.46, 0.75))).toBeCloseTo(
      0.78,
      9,
    )
    expectRefused([relativeDensity(0.9, 0.46, 0.75)], /outside/)
  })
})
