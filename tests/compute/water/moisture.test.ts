import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { moistureByTruck, moistureToAdd, onePoint } from '../../../src/compute/water/moisture.ts'

const n = (out: Readonly<Record<string, number | { refused: string }>>, name: string): number => {
  const value = out[name]
  if (typeof value !== 'number') throw new Error(`${name}: ${value?.refused}`)
  return value
}

describe('moisture', () => {
  const layer = { area: 1000, depth: 0.03, weight: 1600 }
  // A load of 7 m³ takes 700 s at the hose.
  const hose = { fillFlow: 0.01, points: 1 }

  it('needs 1.44 m³ for three points: 1000 m² × 0.03 m × 1600 kg/m³ × 0.03 = 1,440 kg', () => {
    expect(n(moistureToAdd.compute({ ...layer, target: 0.08, found: 0.05 }), 'water')).toBeCloseTo(
      1.44,
      9,
    )
    expect(3 * n(onePoint.compute(layer), 'water')).toBeCloseTo(1.44, 9)
  })

  it('refuses to water what is wet', () => {
    expect(moistureToAdd.compute({ ...layer, target: 0.05, found: 0.08 })['water']).toEqual({
      refused: 'wetter-than-wanted',
    })
  })

  it('needs none when none is missing', () => {
    const truck = {
      ...hose,
      passDepth: 0.0012,
      extra: 1,
      load: 7,
      cycle: 1800,
      trucks: 1,
      soak: 1800,
    }
    const out = moistureByTruck.compute({ ...layer, target: 0.08, found: 0.08, ...truck })
    expect([n(out, 'water'), n(out, 'loads'), n(out, 'passes'), n(out, 'time')]).toEqual([
      0, 0, 0, 0,
    ])
  })

  it('waits for the hose where trucks share one, as a round of water does', () => {
    // 4 loads, 2 trucks, 22.4 min from load to load, of them 6.27 at the hose: they begin at 0, 6.27,
    // 22.4 and 28.67 min, and the last is down at 51.07.
    const min = 60
    const fill = 6.27 * min
    const out = moistureByTruck.compute({
      area: 23_941,
      depth: 0.0508,
      weight: 1329.5,
      target: 0.13,
      found: 0.105,
      passDepth: 0.00127,
      extra: 1.311,
      load: 14.233,
      cycle: 22.4 * min,
      trucks: 2,
      fillFlow: 14.233 / fill,
      points: 1,
      soak: 30 * min,
    })
    expect(n(out, 'loads')).toBe(4)
    expect(n(out, 'time') / min).toBeCloseTo(51.07, 6)
  })

  it('grows with area, depth and missing points, and never with trucks', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 40 }),
        fc.integer({ min: 1, max: 10 }),
        fc.integer({ min: 1, max: 3 }),
        (hundreds, points, trucks) => {
          const at = (area: number, p: number, m: number) =>
            moistureByTruck.compute({
              area,
              depth: 0.03,
              weight: 1600,
              target: 0.05 + p / 100,
              found: 0.05,
              passDepth: 0.0012,
              extra: 1.2,
              load: 7,
              cycle: 1800,
              trucks: m,
              ...hose,
              soak: 1800,
            })
          expect(n(at(200 * hundreds, points, trucks), 'water')).toBeCloseTo(
            2 * n(at(100 * hundreds, points, trucks), 'water'),
            9,
          )
          expect(n(at(100 * hundreds, points + 1, trucks), 'loads')).toBeGreaterThanOrEqual(
            n(at(100 * hundreds, points, trucks), 'loads'),
          )
          expect(n(at(100 * hundreds, points, trucks + 1), 'time')).toBeLessThanOrEqual(
            n(at(100 * hundreds, points, trucks), 'time'),
          )
          expect(n(at(100 * hundreds, points, trucks), 'loads') * 7).toBeGreaterThanOrEqual(
            n(at(100 * hundreds, points, trucks), 'water') - 1e-9,
          )
        },
      ),
      { numRuns: 40 },
    )
  })
})
