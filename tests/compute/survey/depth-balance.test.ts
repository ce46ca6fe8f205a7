import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { railOf } from '../../../src/compute/survey/along.ts'
import { depthBalance } from '../../../src/compute/survey/depth-balance.ts'
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
