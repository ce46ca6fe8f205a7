import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type TruckKind,
  timeOfLoads,
  timeOfRound,
  tripsOfRound,
} from '../../../src/compute/water/truck-trips.ts'

const kinds: fc.Arbitrary<TruckKind> = fc.record({
  count: fc.integer({ min: 1, max: 2 }),
  load: fc.integer({ min: 4, max: 40 }).map((n) => n / 4),
  fill: fc.integer({ min: 2, max: 40 }),
  away: fc.integer({ min: 2, max: 60 }),
})
const points = fc.integer({ min: 1, max: 3 })
const need = fc.integer({ min: 1, max: 60 })

describe('trucks that are alike', () => {
  it('wait for the hose, for each other, or for neither', () => {
    // Filling takes 20 and the way and spraying 20: the hose never rests, 3 × 20 + 40.
    expect(timeOfLoads(4, { count: 2, fill: 20, away: 20 }, 1)).toBe(100)
    // From two hoses: two trips of 40 each.
    expect(timeOfLoads(4, { count: 2, fill: 20, away: 20 }, 2)).toBe(80)
    // Away for 80: begun at 0, 20, 100 and 120.
    expect(timeOfLoads(4, { count: 2, fill: 20, away: 80 }, 1)).toBe(220)
    expect(timeOfLoads(0, { count: 2, fill: 20, away: 80 }, 1)).toBe(0)
  })

  it('take as long by the formula as load by load', () => {
    fc.assert(
      fc.property(kinds, points, need, (kind, hoses, water) => {
        const loads = Math.ceil(water / kind.load)
        expect(timeOfRound(tripsOfRound([kind], hoses, water))).toBeCloseTo(
          timeOfLoads(loads, kind, hoses),
          6,
        )
      }),
    )
  })
})

describe('a round with any trucks', () => {
  const fleets = fc.array(kinds, { minLength: 1, maxLength: 2 })

  it('is never longer for one more truck, nor for one more of a kind', () => {
    fc.assert(
      fc.property(fleets, kinds, points, need, (fleet, other, hoses, water) => {
        const time = timeOfRound(tripsOfRound(fleet, hoses, water))
        const more = timeOfRound(tripsOfRound([...fleet, other], hoses, water))
        expect(more).toBeLessThanOrEqual(time + 1e-6)
        const twice = fleet.map((k, i) => (i === 0 ? { ...k, count: k.count + 1 } : k))
        expect(timeOfRound(tripsOfRound(twice, hoses, water))).toBeLessThanOrEqual(time + 1e-6)
      }),
      { numRuns: 60 },
    )
  })

  it('is never shorter than its fillings one after another, over the filling points', () => {
    fc.assert(
      fc.property(fleets, points, need, (fleet, hoses, water) => {
        const trips = tripsOfRound(fleet, hoses, water)
        const filling = trips.reduce((sum, t) => sum + (fleet[t.kind]?.fill ?? 0), 0)
        expect(timeOfRound(trips)).toBeGreaterThanOrEqual(filling / hoses - 1e-6)
      }),
    )
  })

  it('begins no load that another truck has down sooner', () => {
    // 13.1, 14.6 and 8.4 m³; 48 are wanted. The smallest goes three times, the others once: at the hose
    // from 0, from 1.9 and 4.9 min, the small one again from 18 and 36 min. The largest is back first.
    const trucks = [
      { count: 1, load: 13.1, fill: 3, away: 30.8 },
      { count: 1, load: 14.6, fill: 3.4, away: 36.2 },
      { count: 1, load: 8.4, fill: 1.9, away: 16.1 },
    ]
    const trips = tripsOfRound(trucks, 1, 48)
    expect(trips.map(({ kind }) => kind).toSorted()).toEqual([0, 1, 2, 2, 2])
    expect(timeOfRound(trips)).toBeCloseTo(3 * 18, 6)
  })

  it('is as short as two unlike trucks allow that hardly wait for each other', () => {
    // 1,800 gal: 18 min at the hose, 19 away; 1,080 gal: 10.8 and 13. They bring 48.6 and 45.4
    // gal/min, and the hose gives 100: 6,500 gal need 69 min at least, and one more load at the most.
    const trucks = [
      { count: 1, load: 1800, fill: 18, away: 19 },
      { count: 1, load: 1080, fill: 10.8, away: 13 },
    ]
    const time = timeOfRound(tripsOfRound(trucks, 1, 6500))
    expect(time).toBeGreaterThan(6500 / (1800 / 37 + 1080 / 23.8))
    expect(time).toBeLessThan(6500 / (1800 / 37 + 1080 / 23.8) + 37)
  })

  it('brings the water, and no load that is not needed', () => {
    fc.assert(
      fc.property(fleets, points, need, (fleet, hoses, water) => {
        const loads = tripsOfRound(fleet, hoses, water).map((t) => fleet[t.kind]?.load ?? 0)
        const put = loads.reduce((a, b) => a + b, 0)
        expect(put).toBeGreaterThanOrEqual(water - 1e-6)
        for (const load of loads) expect(put - load).toBeLessThan(water)
      }),
    )
  })

  it('has no more trucks at a hose than there are hoses, and no truck in two places', () => {
    fc.assert(
      fc.property(fleets, points, need, (fleet, hoses, water) => {
        const trips = tripsOfRound(fleet, hoses, water)
        for (const { fills } of trips) {
          const filling = trips.filter((t) => t.fills <= fills && fills < t.full)
          expect(filling.length).toBeLessThanOrEqual(hoses)
          fleet.forEach(({ count }, kind) => {
            const out = trips.filter((t) => t.kind === kind && t.fills <= fills && fills < t.down)
            expect(out.length).toBeLessThanOrEqual(count)
          })
        }
      }),
    )
  })
})
