import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  evapotranspiration,
  evapotranspirationByTemperature,
} from '../../../src/compute/weather/reference-evapotranspiration.ts'
import { dayNumber } from '../../../src/model/day.ts'

const kelvin = (c: number): number => c + 273.15

const radians = (d: number): number => (d * Math.PI) / 180

const n = (out: Readonly<Record<string, number | { refused: string }>>, name: string): number => {
  const value = out[name]
  if (typeof value !== 'number') throw new Error(`${name}: ${value?.refused}`)
  return value
}

const mmADay = (rate: number): number => rate * 86_400 * 1000

// FAO-56 Example 17 (Bangkok, April), whose monthly means give ea directly: RH is chosen so that ea
// is its 2.85 kPa.
const example17 = {
  tmax: kelvin(34.8),
  tmin: kelvin(25.6),
  latitude: radians(13.73),
  day: dayNumber('2027-04-15'),
  humidity: 2.85 / 4.42,
  wind: 2,
  height: 2,
  sun: 8.5 * 3600,
  elevation: 2,
}

describe('evapotranspiration', () => {
  it('gives the 5.72 mm a day of FAO-56 Example 17, but for its soil heat of 0.14 MJ/m²', () => {
    // Without G: 0.408 × 0.246 × 0.14 / (0.246 + 0.0674 × 1.68) = 0.039 mm more.
    expect(mmADay(n(evapotranspiration.compute(example17), 'rate'))).toBeCloseTo(5.72 + 0.04, 1)
  })

  it('draws more from drier and from sunnier air', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 90 }), fc.integer({ min: 1, max: 8 }), (rh, hours) => {
        const at = (humidity: number, sun: number): number =>
          n(
            evapotranspiration.compute({ ...example17, humidity: humidity / 100, sun: sun * 3600 }),
            'rate',
          )
        expect(at(rh, hours)).toBeGreaterThan(at(rh + 5, hours))
        expect(at(rh, hours + 1)).toBeGreaterThan(at(rh, hours))
      }),
      { numRuns: 40 },
    )
  })

  it('refuses more sunshine than daylight, and a high below the low', () => {
    expect(evapotranspiration.compute({ ...example17, sun: 20 * 3600 })['rate']).toEqual({
      refused: 'more-sun-than-daylight',
    })
    expect(
      evapotranspirationByTemperature.compute({ ...example17, tmax: kelvin(10), tmin: kelvin(20) })[
        'rate'
      ],
    ).toHaveProperty('refused')
  })

  it('from temperatures alone gives the 5.0 mm a day of FAO-56 Example 20', () => {
    expect(
      mmADay(
        n(
          evapotranspirationByTemperature.compute({
            tmax: kelvin(26.6),
            tmin: kelvin(14.8),
            latitude: radians(45.72),
            day: dayNumber('2027-07-15'),
          }),
          'rate',
        ),
      ),
    ).toBeCloseTo(5.03, 1)
  })
})
