import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lapLengths } from '../../../src/compute/coverage/lap-lengths.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { FEW, ovals, whole } from '../support/realistic.ts'

describe('coverage', () => {
  it('drives what its laps measure one by one, which is the middle lap for each', () => {
    fc.assert(
      fc.property(ovals, whole(1, 30), (o, strips) => {
        const laps = lapLengths(o.straight, o.radius, o.widthTurns, strips)
        const sum = laps.reduce((a, b) => a + b, 0)
        expect(sum).toBeCloseTo(strips * lapLength(o.straight, o.radius, o.widthTurns / 2), 4)
        expect([...laps].sort((a, b) => a - b)).toEqual(laps)
      }),
      FEW,
    )
  })
})
