import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { infieldArea } from '../../../src/compute/oval/infield-area.ts'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, ovals } from '../support/realistic.ts'

const totalOf = (o: Parameters<typeof trackArea.compute>[0]): number =>
  numberOf(trackArea.compute(o).total)

describe('area of the track', () => {
  it('and the infield make the area inside the outside edge', () => {
    fc.assert(
      fc.property(ovals, (o) => {
        expect(totalOf(o) + infieldArea(o.straight, o.radius)).toBeCloseTo(
          infieldArea(o.straight, o.radius + o.widthTurns),
          4,
        )
      }),
      FEW,
    )
  })
})
