import { describe, expect, it } from 'vitest'
import { weatherDayRows } from '../../../src/compose/schedules/weather-days.ts'
import { addDays } from '../../../src/model/day.ts'
import type { WeatherDay } from '../../../src/model/weather.ts'
import { contextFor, halfMile } from '../support/context.ts'

const placed = halfMile.replace('town: Nowhere', 'town: Nowhere, latitude: 41, longitude: -83')

/** Warm days one after another; rain in millimeters on some of them. */
const days = (count: number, rain: Readonly<Record<number, number>> = {}): readonly WeatherDay[] =>
  Array.from({ length: count }, (_, i) => ({
    date: addDays('2027-06-01', i),
    high: 300,
    low: 288,
    rain: (rain[i] ?? 0) / 1000,
    humidity: undefined,
    wind: undefined,
    sun: undefined,
  }))

describe('the weather record', () => {
  it('shows the last two weeks, and as many days as there are where there are fewer', async () => {
    const rows = async (count: number) =>
      weatherDayRows(await contextFor(placed, { weather: [days(count)] }))
    expect((await rows(20)).map((r) => r[0]).at(0)).toBe('Mon, Jun 7')
    expect(await rows(20)).toHaveLength(14)
    expect(await rows(3)).toHaveLength(3)
  })

  it('dries day by day, and is moister after rain', async () => {
    const rows = weatherDayRows(await contextFor(placed, { weather: [days(6, { 4: 20 })] }))
    const moisture = rows.map((r) => Number.parseFloat(r[5] ?? ''))
    expect(moisture[3]).toBeLessThan(moisture[0] ?? 0)
    expect(moisture[4]).toBeGreaterThan(moisture[3] ?? Infinity)
  })

  it('cannot be worked out without a record, or without knowing where the place lies', async () => {
    expect(weatherDayRows(await contextFor(placed))).toEqual([])
    expect(weatherDayRows(await contextFor(halfMile, { weather: [days(3)] }))).toEqual([])
  })
})
