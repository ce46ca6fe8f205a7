import { describe, expect, it } from 'vitest'
import { laneStagger } from '../../../src/compute/oval/lane-stagger.ts'

describe('lengths around an oval', () => {
  it('sets no stagger in the first lane, and refuses a lane that does not exist', () => {
    expect(laneStagger(1, 1.22, 0.3, 0.2)).toBe(0)
    expect(() => laneStagger(0, 1.22, 0.3, 0.2)).toThrow(RangeError)
  })
})
