import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { depthBalance } from '../../../src/compute/survey/depth-balance.ts'
import { surveyCells } from '../../../src/compute/survey/survey-cells.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, inches } from '../support/realistic.ts'

import { surveys } from '../support/surveys.ts'

describe('a depth survey', () => {
  it('finds as much above as below when the target is the mean by area, and the same both ways where the depth is even', () => {
    fc.assert(
      fc.property(surveys, inches(1, 3), ({ oval, day }, target) => {
        const even = depthBalance({
          ...day,
          readings: day.readings.map((r) => ({ ...r, value: target + 0.01 })),
        }).compute({ ...oval, target, unitWeight: 1600 })
        expect(even.over).toBeCloseTo(0.01 * numberOf(trackArea.compute(oval).total), 4)
        expect(even.overByEnds).toBeCloseTo(numberOf(even.over), 4)
        expect(even.short).toBe(0)
        const cells = surveyCells(day.readings, oval)
        const mean =
          cells.reduce((sum, c) => sum + c.area * c.value, 0) /
          cells.reduce((sum, c) => sum + c.area, 0)
        const balanced = depthBalance(day).compute({ ...oval, target: mean, unitWeight: 1600 })
        expect(balanced.over).toBeCloseTo(numberOf(balanced.short), 6)
      }),
      FEW,
    )
  })
})
