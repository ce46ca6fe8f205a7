import { describe, expect, it } from 'vitest'
import { taperedTrench } from '../../../src/compute/survey/tapered-trench.ts'

describe('slopes and trenches', () => {
  it('remove the full wedge of a trench without ends, and refuse ends that are larger than it', () => {
    const plain = {
      width: 2,
      depth: 1,
      length: 10,
      corner: { base: 0, rise: 0 },
      end: { length: 0, narrowing: 0 },
    }
    expect(taperedTrench(plain).removed).toBe(10)
    expect(() => taperedTrench({ ...plain, corner: { base: 9, rise: 9 } })).toThrow(RangeError)
  })
})
