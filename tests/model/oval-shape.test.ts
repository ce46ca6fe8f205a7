import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lapLength, radiusFrom, straightFrom } from '../../src/model/oval-shape.ts'

const oval = fc.record({
  straight: fc.integer({ min: 0, max: 1500 }),
  radius: fc.integer({ min: 5, max: 800 }),
  out: fc.integer({ min: 0, max: 5 }),
})

describe('the shape of an oval', () => {
  it('is the same from any two of lap, straight and radius', () => {
    fc.assert(
      fc.property(oval, ({ straight, radius, out }) => {
        const lap = lapLength(straight, radius, out)
        expect(radiusFrom(lap, straight, out)).toBeCloseTo(radius, 6)
        expect(straightFrom(lap, radius, out)).toBeCloseTo(straight, 6)
      }),
    )
  })

  it('does not exist where the lap leaves nothing for turns or straights', () => {
    expect(radiusFrom(400, 200, 0.3)).toBeLessThan(0)
    expect(straightFrom(400, 100, 0.3)).toBeLessThan(0)
  })
})
