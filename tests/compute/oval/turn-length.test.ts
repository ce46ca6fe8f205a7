import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { turnLength } from '../../../src/compute/oval/turn-length.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, feet, ovals } from '../support/realistic.ts'

describe('lengths around an oval', () => {
  it('gives two turns and two straights that make a lap', () => {
    fc.assert(
      fc.property(ovals, feet(0, 5), (o, offset) => {
        const turn = numberOf(turnLength.compute({ radius: o.radius, offset }).length)
        expect(2 * turn + 2 * o.straight).toBeCloseTo(lapLength(o.straight, o.radius, offset), 8)
      }),
      FEW,
    )
  })
})
