import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rainAndDrying } from '../../../src/compute/weather/rain-and-drying.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, IN, whole } from '../support/realistic.ts'

const h = 3600

describe('rain', () => {
  const rain = {
    rain: 25.4e-3,
    open: 85,
    closed: 95,
    depth: 1.25 * IN,
    unitWeight: 1670,
    target: 0.08,
    held: 0.14,
    rate: 5e-3 / 86_400,
    daylight: 14 * h,
  }

  it('runs off as in Technical Release 55, table 2-1: 1 in on curve number 85 gives 0.17 in, on 95 gives 0.56 in', () => {
    // NRCS TR-55 (1986), table 2-1, printed to two places.
    const found = rainAndDrying.compute(rain)
    expect(numberOf(found['open-runs']) / IN).toBeCloseTo(0.17, 2)
    expect(numberOf(found['closed-runs']) / IN).toBeCloseTo(0.56, 2)
  })

  it('never soaks in more than fell or than there is room for, and never more into a closed track', () => {
    fc.assert(
      fc.property(whole(1, 100), whole(60, 98), (mm, number) => {
        const found = rainAndDrying.compute({ ...rain, rain: mm / 1000, open: number, closed: 99 })
        expect(numberOf(found['open-in'])).toBeLessThanOrEqual(
          Math.min(mm / 1000, numberOf(found.room)) + 1e-12,
        )
        expect(numberOf(found['closed-in'])).toBeLessThanOrEqual(numberOf(found['open-in']) + 1e-12)
        expect(numberOf(found['open-hours'])).toBeGreaterThanOrEqual(
          numberOf(found['closed-hours']) - 1e-6,
        )
      }),
      FEW,
    )
  })

  it('takes twice as long to dry where the air draws half as much', () => {
    expect(rainAndDrying.compute({ ...rain, rate: rain.rate / 2 })['open-hours']).toBeCloseTo(
      2 * numberOf(rainAndDrying.compute(rain)['open-hours']),
      6,
    )
  })
})
