import { describe, expect, it } from 'vitest'
import { shapeFromLapAndRadius } from '../../../src/compute/oval/shape-from-lap-and-radius.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FT } from '../support/realistic.ts'

const offset = 3 * FT

describe('shape of an oval', () => {
  it('gives a half mile with that radius straights of 600 ft', () => {
    expect(
      numberOf(
        shapeFromLapAndRadius.compute({
          measuredLap: 2640 * FT,
          measuredRadius: 226.18312 * FT,
          offset,
        }).straight,
      ) / FT,
    ).toBeCloseTo(600, 4)
  })

  it('refuses a radius that is too large for the lap', () => {
    expectRefused(
      [shapeFromLapAndRadius.compute({ measuredLap: 800, measuredRadius: 130, offset }).straight],
      /^circle-too-long$/,
    )
  })
})
