import { describe, expect, it } from 'vitest'
import { outsideLength } from '../../../src/compute/oval/outside-length.ts'
import { railLength } from '../../../src/compute/oval/rail-length.ts'
import { numberOf } from '../support/answers.ts'
import { FT } from '../support/realistic.ts'

const straight = 600 * FT

const radius = 226.25 * FT

describe('lengths around an oval', () => {
  it('gives rail and outside edge of a half mile', () => {
    // 1200 + 2π × 226.25 = 2621.571; 70 ft out 2π × 70 = 439.823 more
    expect(numberOf(railLength.compute({ straight, radius }).length) / FT).toBeCloseTo(2621.5707, 4)
    expect(
      numberOf(outsideLength.compute({ straight, radius, widthTurns: 70 * FT }).length) / FT,
    ).toBeCloseTo(3061.3936, 4)
  })
})
