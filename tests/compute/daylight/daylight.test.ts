import { describe, expect, it } from 'vitest'
import { daylight } from '../../../src/compute/daylight/daylight.ts'
import { numberOf } from '../support/answers.ts'

const radians = (d: number): number => (d * Math.PI) / 180

describe('daylight', () => {
  const place = {
    latitude: radians(37.7749),
    longitude: radians(-122.4194),
    day: Date.parse('2017-06-09T00:00:00Z') / 86_400_000,
    zone: -7 * 3600,
  }

  it("agrees with NOAA's calculator to a fifth of a minute", () => {
    const out = daylight.compute(place)
    expect(numberOf(out['rise']) / 60).toBeCloseTo(347.55, 0)
    expect(numberOf(out['set']) / 60).toBeCloseTo(1230.87, 0)
  })

  it('puts first light before sunrise and last light after sunset', () => {
    const out = daylight.compute(place)
    const [dawn, rise, set, dusk] = ['dawn', 'rise', 'set', 'dusk'].map((name) =>
      numberOf(out[name]),
    ) as [number, number, number, number]
    expect(dawn < rise && rise < set && set < dusk).toBe(true)
  })

  it('refuses a day without sunrise', () => {
    expect(daylight.compute({ ...place, latitude: radians(80) })['rise']).toHaveProperty('refused')
  })
})
