import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { railOf } from '../../../src/compute/survey/along.ts'
import { surveyCells } from '../../../src/compute/survey/survey-cells.ts'
import type { SurveyDay } from '../../../src/model/survey.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, inches, ovals } from '../support/realistic.ts'

/** A survey on even stations and three lines, with any depths. */
const surveys = fc
  .record({
    oval: ovals,
    stations: fc.integer({ min: 3, max: 16 }),
    depths: fc.array(inches(0, 4), { minLength: 48, maxLength: 48 }),
  })
  .map(({ oval, stations, depths }) => {
    const readings = Array.from({ length: stations }, (_, i) =>
      [0.1, 0.5, 0.9].map((share, j) => ({
        station: (i * railOf(oval)) / stations,
        offset: share * oval.widthTurns,
        value: depths[3 * i + j] ?? 0,
      })),
    ).flat()
    return { oval, day: { date: '2027-06-12', readings } satisfies SurveyDay }
  })

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
