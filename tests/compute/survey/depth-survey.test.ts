import fc from 'fast-check'
import * as statistics from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { railOf } from '../../../src/compute/survey/along.ts'
import { depthSurvey } from '../../../src/compute/survey/depth-survey.ts'
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
  // Second opinion: simple-statistics (ISC).
  it('has the mean and spread that a statistics library finds', () => {
    fc.assert(
      fc.property(surveys, ({ day }) => {
        const depths = day.readings.map((r) => r.value)
        const found = depthSurvey(day).compute({ target: 0.03, tolerance: 0.006 })
        expect(found.mean).toBeCloseTo(statistics.mean(depths), 12)
        expect(found.spread).toBeCloseTo(statistics.sampleStandardDeviation(depths), 12)
      }),
      FEW,
    )
  })

  it('has no share outside 0 and 1, and a larger share with a larger tolerance', () => {
    fc.assert(
      fc.property(surveys, inches(0, 1), inches(0, 1), ({ day }, a, b) => {
        const share = (tolerance: number): number =>
          numberOf(depthSurvey(day).compute({ target: 0.03, tolerance }).share)
        expect(share(a)).toBeGreaterThanOrEqual(0)
        expect(share(a + b)).toBeLessThanOrEqual(1)
        expect(share(a + b)).toBeGreaterThanOrEqual(share(a))
      }),
      FEW,
    )
  })
})
