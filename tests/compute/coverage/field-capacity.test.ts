import { describe, expect, it } from 'vitest'
import { fieldCapacity } from '../../../src/compute/coverage/field-capacity.ts'

describe('area rate of an implement', () => {
  it('refuses to work more than all of the time', () => {
    expect(() => fieldCapacity(2, 3, 1.1)).toThrow(RangeError)
    expect(fieldCapacity(2, 3, 1)).toBe(6)
  })
})
