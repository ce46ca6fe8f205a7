import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, ovals } from '../support/realistic.ts'

const totalOf = (o: Parameters<typeof trackArea.compute>[0]): number =>
  numberOf(trackArea.compute(o).total)

describe('area of the track', () => {
  it('adds two rectangles and a ring', () => {
    // 2 × 600 × 70 = 84,000; π (296.25² − 226.25²) = π × 36,575 = 114,903.75
    const area = trackArea.compute({
      straight: 600 * FT,
      radius: 226.25 * FT,
      widthStraights: 70 * FT,
      widthTurns: 70 * FT,
    })
    expect(numberOf(area.straights) / FT ** 2).toBeCloseTo(84_000, 6)
    expect(numberOf(area.turns) / FT ** 2).toBeCloseTo(114_903.751, 2)
    expect(area.acres).toBe(area.total)
  })

  it('equals width times the length of the middle line', () => {
    fc.assert(
      fc.property(ovals, (o) => {
        expect(totalOf(o)).toBeCloseTo(
          o.widthTurns * lapLength(o.straight, o.radius, o.widthTurns / 2),
          4,
        )
      }),
      FEW,
    )
  })

  it('is the sum of an inner and an outer strip', () => {
    fc.assert(
      fc.property(ovals, (o) => {
        const half = o.widthTurns / 2
        const inner = totalOf({ ...o, widthStraights: half, widthTurns: half })
        const outer = totalOf({
          ...o,
          radius: o.radius + half,
          widthStraights: half,
          widthTurns: half,
        })
        expect(inner + outer).toBeCloseTo(totalOf(o), 4)
      }),
      FEW,
    )
  })
})
