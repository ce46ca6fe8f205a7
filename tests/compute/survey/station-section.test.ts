import { describe, expect, it } from 'vitest'
import { sectionParts } from '../../../src/compute/survey/station-section.ts'

describe('a section across the track', () => {
  it('splits where it crosses what is wanted: 20 m from 2 cm too low to 2 cm too high is 0.1 m² either way', () => {
    const { over, short } = sectionParts(
      [
        { station: 0, offset: 0, value: 0.02 },
        { station: 0, offset: 20, value: 0.06 },
      ],
      () => 0.04,
      20,
    )
    expect(over).toBeCloseTo(0.1, 12)
    expect(short).toBeCloseTo(0.1, 12)
  })
})
