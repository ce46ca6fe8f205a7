import { describe, expect, it } from 'vitest'
import { shapeFromLapAndRadius } from '../../../src/compute/oval/shape-from-lap-and-radius.ts'
import { shapeFromLapAndStraight } from '../../../src/compute/oval/shape-from-lap-and-straight.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FT } from '../support/realistic.ts'

const offset = 3 * FT

describe('shape of an oval', () => {
  it('gives a half mile with 600 ft straights a radius of 226.18 ft', () => {
    // (2640 − 1200) ÷ 2π − 3 = 229.183 − 3
    expect(
      numberOf(
        shapeFromLapAndStraight.compute({
          measuredLap: 2640 * FT,
          measuredStraight: 600 * FT,
          offset,
        }).radius,
      ) / FT,
    ).toBeCloseTo(226.1831, 4)
  })

  it('knows a circle as an oval without straights', () => {
    const lap = lapLength(0, 100, 1)
    expect(
      numberOf(
        shapeFromLapAndStraight.compute({ measuredLap: lap, measuredStraight: 0, offset: 1 })
          .radius,
      ),
    ).toBeCloseTo(100, 9)
    expect(
      numberOf(
        shapeFromLapAndRadius.compute({ measuredLap: lap, measuredRadius: 99.9999, offset: 1 })
          .straight,
      ),
    ).toBeCloseTo(0, 3)
  })

  it('refuses straights that take up the whole lap', () => {
    expectRefused(
      [shapeFromLapAndStraight.compute({ measuredLap: 800, measuredStraight: 400, offset }).radius],
      /^straights-too-long$/,
    )
  })
})
