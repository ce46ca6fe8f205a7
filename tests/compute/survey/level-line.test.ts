import * as statistics from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { levelLine } from '../../../src/compute/survey/level-line.ts'

describe('a level survey', () => {
  // Second opinion: simple-statistics (ISC).
  it('fits the line that a statistics library fits', () => {
    const readings = [1, 7, 13, 19].map((offset, i) => ({
      station: 0,
      offset,
      value: [100.02, 100.11, 100.4, 100.5][i] ?? 0,
    }))
    expect(levelLine(readings).slope).toBeCloseTo(
      statistics.linearRegression(readings.map((r) => [r.offset, r.value])).m,
      12,
    )
    expect(() => levelLine([{ station: 0, offset: 1, value: 1 }])).toThrow(RangeError)
  })
})
