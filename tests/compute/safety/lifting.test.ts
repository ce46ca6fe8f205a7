import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lifting } from '../../../src/compute/safety/lifting.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, IN, whole } from '../support/realistic.ts'

describe('a lift', () => {
  const bag = { reach: 0.4, height: 0.5, travel: 0.7, twist: 0.5, often: 0.9, grip: 0.95, load: 20 }
  const limit = (more: object): number => numberOf(lifting.compute({ ...bag, ...more }).limit)

  it('may be lighter the farther out, the farther moved, the more twisted, the oftener, and the worse to grip', () => {
    fc.assert(
      fc.property(whole(10, 24), whole(10, 60), whole(0, 120), (out, far, degrees) => {
        const at = { reach: out * IN, travel: far * IN, twist: (degrees * Math.PI) / 180 }
        for (const worse of [
          { reach: (out + 1) * IN },
          { travel: (far + 1) * IN },
          { twist: ((degrees + 5) * Math.PI) / 180 },
          { often: 0.8 },
          { grip: 0.9 },
        ])
          expect(limit({ ...at, ...worse })).toBeLessThan(limit(at))
      }),
      FEW,
    )
  })

  it('may be heaviest at knuckle height', () => {
    const heights = Array.from({ length: 70 }, (_, inches) => limit({ height: inches * IN }))
    expect(heights.indexOf(Math.max(...heights))).toBe(30)
  })

  it('is never allowed above the constant of the equation, nor better for being nearer or shorter than ten inches', () => {
    expect(limit({ reach: 8 * IN })).toBe(limit({ reach: 10 * IN }))
    expect(limit({ travel: 0 })).toBe(limit({ travel: 10 * IN }))
    expect(
      limit({ reach: 0.2, height: 30 * IN, travel: 0, twist: 0, often: 1, grip: 1 }),
    ).toBeCloseTo(51 * 0.45359237, 12)
  })

  it('has an index of one at the limit, and is refused where nobody should lift', () => {
    expect(numberOf(lifting.compute({ ...bag, load: limit({}) }).index)).toBeCloseTo(1, 12)
    expectRefused(lifting.compute({ ...bag, often: 0 }), /^no-such-lift$/)
  })
})
