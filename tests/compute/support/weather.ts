import type { WeatherDay } from '../../../src/model/weather.ts'

/** Where the weather is measured: rad, m, m. */
export const place = { latitude: 0.71, elevation: 270, windHeight: 10 }

/** A hot and windy day in July. */
export const weather = (more: Partial<WeatherDay> = {}): WeatherDay => ({
  date: '2027-07-06',
  high: 302,
  low: 289,
  rain: 0,
  humidity: 0.7,
  wind: 3,
  sun: 32_000,
  ...more,
})
