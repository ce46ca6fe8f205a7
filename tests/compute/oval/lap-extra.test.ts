import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lapExtra } from '../../../src/compute/oval/lap-extra.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, ovals } from '../support/realistic.ts'

describe('lengths around an oval', () => {
  it('adds 6.28 ft to a lap for each foot farther out, on every oval', () => {
    const extra = numberOf(lapExtra.compute({ out: FT }).extra)
    expect(extra / FT).toBeCloseTo(6.28319, 5)
    fc.assert(
      fc.property(ovals, feet(0, 60), (o, x) => {
        expect(
          lapLength(o.straight, o.radius, x + FT) - lapLength(o.straight, o.radius, x),
        ).toBeCloseTo(extra, 9)
      }),
      FEW,
    )
  })
})
