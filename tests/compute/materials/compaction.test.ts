import { describe, expect, it } from 'vitest'
import { relativeCompaction } from '../../../src/compute/materials/compaction.ts'

describe('compaction', () => {
  it('is whole at the highest density of the laboratory, and asks for one', () => {
    expect(relativeCompaction(1900, 1900)).toBe(1)
    expect(() => relativeCompaction(1900, 0)).toThrow(RangeError)
  })
})
