import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dailyDemand } from '../../../src/compute/water/daily-demand.ts'
import { FEW, whole } from '../support/realistic.ts'

const mmADay = 1e-3 / 86_400

describe('the water of a dry day', () => {
  it('is a fifth more than grass loses, and more by what falls twice: worked by hand', () => {
    // 5 mm × 1.2 × 18,000 m² = 108 m³; a quarter more for overlaps: 135 m³, 20 loads of 7 m³.
    const out = dailyDemand.compute({ rate: 5 * mmADay, area: 18_000, extra: 1.25, load: 7 })
    expect(out.water).toBeCloseTo(135, 9)
    expect(out.loads).toBe(20)
  })

  it('is held by its loads, and would not be by one fewer', () => {
    fc.assert(
      fc.property(whole(1, 9), whole(10, 14), whole(2, 16), (mm, tenths, load) => {
        const { water, loads } = dailyDemand.compute({
          rate: mm * mmADay,
          area: 18_000,
          extra: tenths / 10,
          load,
        })
        expect(Number(loads) * load).toBeGreaterThanOrEqual(Number(water) - 1e-6)
        expect((Number(loads) - 1) * load).toBeLessThan(Number(water))
      }),
      FEW,
    )
  })
})
