import { dayOfYear, secondsPerDay } from '../../model/day.ts'
import type { WeatherDay } from '../../model/weather.ts'
import {
  airPressure,
  meanSaturation,
  psychrometric,
  saturationSlope,
  vaporFromMean,
  windAtTwoMeters,
} from './air.ts'
import { hargreaves, penmanMonteith } from './evapotranspiration.ts'
import { depletionAfter } from './layer-drying.ts'
import {
  clearSky,
  daylightHours,
  extraterrestrial,
  netLongWave,
  netShortWave,
  solarFromRange,
  solarFromSunshine,
} from './radiation.ts'
import { wetSurface } from './wet-surface.ts'

/** Where the weather was observed; radians, m. */
export type WeatherPlace = {
  readonly latitude: number
  readonly elevation: number
  readonly windHeight: number
}

const celsius = (kelvin: number): number => kelvin - 273.15

/**
 * Reference evapotranspiration of one observed day, mm: Penman–Monteith where humidity and wind
 * were observed (sunshine may stand in from the range of temperature, FAO-56 Eq. 50), Hargreaves
 * where only temperatures were.
 */
export function observedEvapotranspiration(day: WeatherDay, place: WeatherPlace): number {
  const [hot, cold, number] = [celsius(day.high), celsius(day.low), dayOfYear(day.date)]
  const ra = extraterrestrial(place.latitude, number)
  if (day.humidity === undefined || day.wind === undefined)
    return Math.max(0, hargreaves(ra, hot, cold))
  const length = daylightHours(place.latitude, number)
  const rs =
    day.sun === undefined
      ? solarFromRange(ra, hot, cold)
      : solarFromSunshine(ra, Math.min(day.sun / 3600, length), length)
  const ea = vaporFromMean(hot, cold, day.humidity)
  const rn = netShortWave(rs) - netLongWave(hot, cold, ea, rs, clearSky(ra, place.elevation))
  const t = (hot + cold) / 2
  return Math.max(
    0,
    penmanMonteith({
      rn,
      g: 0,
      t,
      u2: windAtTwoMeters(day.wind, place.windHeight),
      es: meanSaturation(hot, cold),
      ea,
      delta: saturationSlope(t),
      gamma: psychrometric(airPressure(place.elevation)),
    }),
  )
}

/** One day of the record: all depths in m of water. */
export type RecordedDay = {
  readonly day: WeatherDay
  readonly drawn: number
  readonly lost: number
  readonly runs: number /** Depletion of the layer in the evening. */
  readonly depleted: number
}

export type Layer = {
  readonly total: number
  readonly readily: number /** Depletion at the moisture wanted: where the record begins. */
  readonly wanted: number /** Runoff, m, of a rain. */
  readonly runoff: (rain: number) => number
}

/**
 * The bare layer through a record of weather, without watering: FAO-56 chapter 7, the rain of a day
 * falling in its morning.
 */
export function weatherRun(
  days: readonly WeatherDay[],
  place: WeatherPlace,
  layer: Layer,
): readonly RecordedDay[] {
  let depleted = layer.wanted
  return days.map((day) => {
    const drawn = observedEvapotranspiration(day, place) / 1000
    const runs = layer.runoff(day.rain)
    const start = Math.max(0, depleted - (day.rain - runs))
    const end =
      drawn > 0
        ? depletionAfter(
            start,
            layer.total,
            layer.readily,
            (wetSurface * drawn) / secondsPerDay,
            secondsPerDay,
          )
        : start
    depleted = end
    return { day, drawn, lost: end - start, runs, depleted: end }
  })
}
