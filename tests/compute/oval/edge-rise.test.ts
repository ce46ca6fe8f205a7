import { describe, expect, it } from 'vitest'
import { edgeRise } from '../../../src/compute/oval/edge-rise.ts'
import { numberOf } from '../support/answers.ts'
import { FT } from '../support/realistic.ts'

describe('lengths around an oval', () => {
  it('raises the outside edge by slope times width', () => {
    // 2 % of 60 ft = 1.2 ft; 8 % of 70 ft = 5.6 ft
    const rise = edgeRise.compute({
      widthStraights: 60 * FT,
      widthTurns: 70 * FT,
      crossFallStraights: 0.02,
      crossFallTurns: 0.08,
    })
    expect(numberOf(rise.straights) / FT).toBeCloseTo(1.2, 9)
    expect(numberOf(rise.turns) / FT).toBeCloseTo(5.6, 9)
  })
})
