import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stationCount } from '../../../src/compute/oval/station-count.ts'
import { lapLength } from '../../../src/model/oval-shape.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, feet, ovals } from '../support/realistic.ts'

describe('lengths around an oval', () => {
  it('counts stations: a full last gap does not need one more', () => {
    expect(stationCount.compute({ rail: 2621.2 * FT, spacing: 100 * FT }).count).toBe(27)
    expect(stationCount.compute({ rail: 2600 * FT, spacing: 100 * FT }).count).toBe(26)
  })

  it('never leaves a gap wider than the spacing', () => {
    fc.assert(
      fc.property(ovals, feet(20, 300), (o, spacing) => {
        const rail = lapLength(o.straight, o.radius, 0)
        const count = numberOf(stationCount.compute({ rail, spacing }).count)
        expect(count * spacing).toBeGreaterThanOrEqual(rail - 1e-3)
        expect((count - 1) * spacing).toBeLessThan(rail)
      }),
      FEW,
    )
  })
})
