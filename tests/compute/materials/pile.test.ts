import { describe, expect, it } from 'vitest'
import { conePile, windrowPile } from '../../../src/compute/materials/pile.ts'

describe('piles', () => {
  it('are cones where a windrow has no crest', () => {
    expect(windrowPile(6, 0, 0.6)).toEqual(conePile(6, 0.6))
  })

  it('grow with the cube of their width, and refuse an upright slope', () => {
    expect(conePile(8, 0.6).volume).toBeCloseTo(8 * conePile(4, 0.6).volume, 9)
    expect(() => conePile(8, Math.PI / 2)).toThrow(RangeError)
  })
})
