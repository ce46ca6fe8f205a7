import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drying } from '../../../src/compute/weather/drying.ts'

const radians = (d: number): number => (d * Math.PI) / 180

const n = (out: Readonly<Record<string, number | { refused: string }>>, name: string): number => {
  const value = out[name]
  if (typeof value !== 'number') throw new Error(`${name}: ${value?.refused}`)
  return value
}

describe('drying', () => {
  const summer = { rate: 0.005 / 86_400, depth: 0.00127, latitude: radians(40.6), day: 215 }

  it('dries a light pass off in about two hours of a summer day', () => {
    // 1.2 × 5 mm × π / (2 × 14.1 h) = 0.67 mm/h; 1.27 mm / 0.67 mm/h = 1.9 h.
    expect(n(drying.compute(summer), 'hours') / 3600).toBeCloseTo(1.9, 1)
  })

  it('takes twice as long for twice the water', () => {
    expect(n(drying.compute({ ...summer, depth: 2 * summer.depth }), 'hours')).toBeCloseTo(
      2 * n(drying.compute(summer), 'hours'),
      6,
    )
  })

  it('draws no more in a day than the day draws', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -60, max: 60 }),
        fc.integer({ min: 1, max: 365 }),
        (latitude, day) => {
          const out = drying.compute({ ...summer, latitude: radians(latitude), day })
          // A half sine has 2/π of its peak as mean.
          expect((n(out, 'peak') * n(out, 'daylight') * 2) / Math.PI).toBeCloseTo(1.2 * 0.005, 9)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('refuses where nothing dries', () => {
    expect(drying.compute({ ...summer, rate: 0 })['hours']).toHaveProperty('refused')
  })
})
