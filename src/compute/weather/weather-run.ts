import { dayOfYear, secondsPerDay } from '../../model/day.ts'
import { daylightHours } from '../../model/day-length.ts'
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
  extraterrestrial,
  netLongWave,
  netShortWave,
  solarFromRange,
  solarFromSunshine,
} from './radiation.ts'
import { partWater } from './wetted-layer.ts'

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
  /** Taken in by the base out of this day's rain. */
  readonly base: number
  readonly runs: number
  /** In the evening: what stands in hollows, and what the layer lacks of all that it holds drained,
   * below zero when it is wetter. */
  readonly stands: number
  readonly depleted: number
}

/** A bare layer over a base; m of water. */
export type Layer = {
  /** What it can lose below drained, and of it readily. */
  readonly total: number
  readonly readily: number
  /** Depletion at the moisture wanted: where the record begins. */
  readonly wanted: number
  /** What its pores take above drained. */
  readonly aboveHeld: number
  /** What the base takes in once; it is not counted on to empty again. */
  readonly base: number
  readonly hollows: number
  /** What a wet bare surface loses, against the reference grass. */
  readonly draw: number
}

/** The depletion of the layer in the evening, after a day that draws so much, m. */
function evening(morning: number, stands: number, draw: number, layer: Layer): number {
  // What stands, and what is more than the layer holds, goes first and at the full rate.
  const free = stands + Math.max(0, -morning)
  const start = Math.max(0, morning)
  if (draw <= free) return morning + Math.max(0, draw - stands)
  const left = draw - free
  return depletionAfter(start, layer.total, layer.readily, left / secondsPerDay, secondsPerDay)
}

/**
 * The bare layer through a record of weather, without watering: FAO-56 chapter 7, with room above
 * drained for what a rain leaves in pores and hollows. The rain of a day falls in its morning.
 */
export function weatherRun(
  days: readonly WeatherDay[],
  place: WeatherPlace,
  layer: Layer,
): readonly RecordedDay[] {
  let [depleted, stood, base] = [layer.wanted, 0, layer.base]
  return days.map((day) => {
    const drawn = observedEvapotranspiration(day, place) / 1000
    const parts = partWater(stood + day.rain, {
      pores: depleted + layer.aboveHeld,
      toHeld: depleted,
      base,
      hollows: layer.hollows,
    })
    const morning = depleted - parts.layer
    const draw = layer.draw * drawn
    const end = evening(morning, parts.stands, draw, layer)
    const stands = Math.max(0, parts.stands - draw)
    const lost = end - morning + parts.stands - stands
    ;[depleted, stood, base] = [end, stands, base - parts.base]
    return { day, drawn, lost, base: parts.base, runs: parts.runs, stands, depleted: end }
  })
}
