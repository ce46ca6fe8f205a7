import { describe, expect, it } from 'vitest'
import { wholeUp } from '../../src/compute/whole-up.ts'

describe('counting whole things', () => {
  it('rounds up, but not for a hair of arithmetic', () => {
    expect([6.2, 7, 7.0000000001, 0].map(wholeUp)).toEqual([7, 7, 7, 0])
  })
})
