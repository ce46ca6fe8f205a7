import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { daylight } from '../../../src/compute/daylight/daylight.ts'
import { drying } from '../../../src/compute/weather/drying.ts'
import { heat } from '../../../src/compute/weather/heat.ts'
import {
  evapotranspiration,
  evapotranspirationByTemperature,
} from '../../../src/compute/weather/reference-evapotranspiration.ts'

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
  day: 105,
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
      refused: 'more sunshine than daylight',
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
            day: 196,
          }),
          'rate',
        ),
      ),
    ).toBeCloseTo(5.03, 1)
  })
})

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

describe('heat', () => {
  it("agrees with the weather service's chart: 96 °F at 50 % feels like 108 °F", () => {
    const k = n(heat.compute({ temperature: (96 + 459.67) / 1.8, humidity: 0.5 }), 'index')
    expect(Math.round(k * 1.8 - 459.67)).toBe(108)
  })
})

describe('daylight', () => {
  const place = {
    latitude: radians(37.7749),
    longitude: radians(-122.4194),
    day: Date.parse('2017-06-09T00:00:00Z') / 86_400_000,
    zone: -7 * 3600,
  }
  it("agrees with NOAA's calculator to a fifth of a minute", () => {
    const out = daylight.compute(place)
    expect(n(out, 'rise') / 60).toBeCloseTo(347.55, 0)
    expect(n(out, 'set') / 60).toBeCloseTo(1230.87, 0)
  })
  it('puts first light before sunrise and last light after sunset', () => {
    const out = daylight.compute(place)
    const [dawn, rise, set, dusk] = ['dawn', 'rise', 'set', 'dusk'].map((name) => n(out, name)) as [
      number,
      number,
      number,
      number,
    ]
    expect(dawn < rise && rise < set && set < dusk).toBe(true)
  })
  it('refuses a day without sunrise', () => {
    expect(daylight.compute({ ...place, latitude: radians(80) })['rise']).toHaveProperty('refused')
  })
})
