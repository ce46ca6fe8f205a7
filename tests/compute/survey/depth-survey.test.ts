import fc from 'fast-check'
import * as statistics from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { depthSurvey } from '../../../src/compute/survey/depth-survey.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, inches } from '../support/realistic.ts'

import { surveys } from '../support/surveys.ts'

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
