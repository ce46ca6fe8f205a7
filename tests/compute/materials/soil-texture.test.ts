import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { soilTexture, textures } from '../../../src/compute/materials/soil-texture.ts'

describe('texture', () => {
  it('finds one of the twelve classes for every mixture', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        (sand, clay) => {
          fc.pre(sand + clay <= 100)
          expect(textures).toContain(soilTexture(sand / 100, clay / 100))
        },
      ),
      { numRuns: 100 },
    )
  })

  it('reaches all twelve', () => {
    const found = new Set<string>()
    for (let sand = 0; sand <= 100; sand += 2)
      for (let clay = 0; sand + clay <= 100; clay += 2)
        found.add(soilTexture(sand / 100, clay / 100))
    expect([...found].sort()).toEqual([...textures].sort())
  })

  it('throws at more than the whole', () => {
    expect(() => soilTexture(0.7, 0.4)).toThrow(RangeError)
  })
})
