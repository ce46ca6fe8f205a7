import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shapeFromLapAndRadius } from '../../../src/compute/oval/shape-from-lap-and-radius.ts'
import { shapeFromLapAndStraight } from '../../../src/compute/oval/shape-from-lap-and-straight.ts'
import { shapeFromStraightAndRadius } from '../../../src/compute/oval/shape-from-straight-and-radius.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, feet, ovals } from '../support/realistic.ts'

describe('shape of an oval', () => {
  it('comes back to what was put in, whichever two are known', () => {
    fc.assert(
      fc.property(ovals, feet(0, 6), ({ straight, radius }, o) => {
        const lap = shapeFromStraightAndRadius.compute({
          measuredStraight: straight,
          measuredRadius: radius,
          offset: o,
        }).lap
        expect(
          numberOf(
            shapeFromLapAndStraight.compute({
              measuredLap: numberOf(lap),
              measuredStraight: straight,
              offset: o,
            }).radius,
          ),
        ).toBeCloseTo(radius, 6)
        expect(
          numberOf(
            shapeFromLapAndRadius.compute({
              measuredLap: numberOf(lap),
              measuredRadius: radius,
              offset: o,
            }).straight,
          ),
        ).toBeCloseTo(straight, 6)
      }),
      FEW,
    )
  })
})
