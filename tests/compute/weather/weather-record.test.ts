import { describe, expect, it } from 'vitest'
import { weatherRecord } from '../../../src/compute/weather/weather-record.ts'
import type { WeatherDay } from '../../../src/model/weather.ts'
import { numberOf } from '../support/answers.ts'

import { place, weather } from '../support/weather.ts'

describe('a record of weather', () => {
  it('leaves less to add on the evening after a soaking than after a dry day, and more with every dry day', () => {
    const input = {
      depth: 0.032,
      unitWeight: 1670,
      held: 0.14,
      target: 0.08,
      dusty: 0.03,
      share: 0.5,
      solids: 2700,
      fillEarly: 0.85,
      fillLate: 1,
      baseEarly: 0.0086,
      baseLate: 0,
      pondEarly: 0.0012,
      pondLate: 0.005,
      drawEarly: 1.2,
      drawLate: 1.1,
      ...place,
      area: 17_000,
    }
    const short = (...days: WeatherDay[]): number =>
      numberOf(weatherRecord(days).compute(input).short)
    expect(short(weather({ rain: 0.05 }))).toBeLessThan(short(weather()))
    expect(short(weather(), weather({ date: '2027-07-07' }))).toBeGreaterThan(short(weather()))
  })
})
