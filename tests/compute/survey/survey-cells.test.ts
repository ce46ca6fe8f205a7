import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { surveyCells } from '../../../src/compute/survey/survey-cells.ts'
import { numberOf } from '../support/answers.ts'
import { FEW } from '../support/realistic.ts'

import { surveys } from '../support/surveys.ts'

describe('a depth survey', () => {
  it('shares the whole track out among its readings', () => {
    fc.assert(
      fc.property(surveys, ({ oval, day }) => {
        const area = surveyCells(day.readings, oval).reduce((sum, c) => sum + c.area, 0)
        expect(area).toBeCloseTo(numberOf(trackArea.compute(oval).total), 4)
      }),
      FEW,
    )
  })
})
