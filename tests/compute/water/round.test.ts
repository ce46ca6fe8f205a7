import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { waterRound, waterRoundOfTwo } from '../../../src/compute/water/round.ts'
import { numberOf } from '../support/answers.ts'

describe('a round of water', () => {
  it('whole loads hold the round, and one fewer would not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 40_000 }),
        fc.integer({ min: 5, max: 40 }),
        (area, tenths) => {
          const load = tenths / 4
          const out = waterRound.compute({
            area,
            depth: 0.0012,
            sprayWidth: 6,
            distance: area / 5,
            load,
            cycle: 1500,
            trucks: 2,
            fillFlow: 0.01,
            points: 1,
          })
          // Strips of 6 m that move out 5 m: a fifth of the water lies twice.
          expect(numberOf(out.extra)).toBeCloseTo(1.2, 9)
          expect(numberOf(out.loads) * load).toBeGreaterThanOrEqual(numberOf(out.water) - 1e-6)
          expect((numberOf(out.loads) - 1) * load).toBeLessThan(numberOf(out.water))
        },
      ),
      { numRuns: 40 },
    )
  })

  const min = 60
  /** 500 m² at 4 mm: 2 m³, in loads of 1 m³ that fill in 10 min and are back after 30. */
  const round = {
    area: 500,
    depth: 0.004,
    sprayWidth: 5,
    distance: 100,
    load: 1,
    cycle: 30 * min,
    trucks: 1,
    fillFlow: 1 / (10 * min),
    points: 1,
  }

  it('takes one truck its loads one after another, and two wait for each other at the hose', () => {
    // 2 × 30 min; with two trucks the second fills when the first is full: 10 + 30 min.
    expect(numberOf(waterRound.compute(round).time) / min).toBeCloseTo(60, 9)
    expect(numberOf(waterRound.compute({ ...round, trucks: 2 }).time) / min).toBeCloseTo(40, 9)
    // From two hoses both are down after 30 min.
    const two = waterRound.compute({ ...round, trucks: 2, points: 2 })
    expect(numberOf(two.time) / min).toBeCloseTo(30, 9)
    expect(numberOf(two.alone) / min).toBeCloseTo(60, 9)
  })

  it('shares its loads between trucks that are not alike, as the table of loads shows', () => {
    // The little one takes 0.5 m³: 5 min at the hose and 15 away. It fills first and is down at 20;
    // the big one fills from 5 to 15 and is down at 35; the little one fills again from 20 and is
    // down at 40. 0.5 + 1 + 0.5 = 2 m³.
    const x = { ...round, trucks2: 1, load2: 0.5, away2: 15 * min }
    const out = waterRoundOfTwo.compute(x)
    expect([numberOf(out.time) / min, out.loads]).toEqual([40, 3])
    expect(numberOf(out.each)).toBeCloseTo(2 / 3, 9)
    const rows = waterRoundOfTwo.steps?.['trips']?.(x).rows.map((r) => r.map(Number))
    expect(rows?.map(([, kind, ...t]) => [kind, ...t.map((s) => s / min)])).toEqual([
      [2, 0, 5, 20],
      [1, 5, 15, 35],
      [2, 20, 25, 40],
    ])
  })
})
