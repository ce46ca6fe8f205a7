import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, refuse } from '../calculation.ts'
import {
  airPressure,
  meanSaturation,
  psychrometric,
  saturationSlope,
  vaporFromMean,
  windAtTwoMeters,
} from './air.ts'
import { hargreaves, penmanMonteith } from './evapotranspiration.ts'
import { clearSky, netLongWave, netShortWave, solarFromSunshine } from './radiation.ts'
import {
  aboveOutputs,
  aboveSteps,
  dayInput,
  hoursOf,
  latitudeInput,
  yearDayTerms,
} from './sun-on-a-day.ts'

const celsius = (kelvin: number): number => kelvin - 273.15
const perDay = (mm: number): number => mm / 1000 / secondsPerDay

const tmax: InputSpec = {
  symbol: 'T_{max}',
  kind: 'temperature',
  range: [243, 328],
  formulaUnit: '°C',
}
const tmin: InputSpec = {
  symbol: 'T_{min}',
  kind: 'temperature',
  range: [233, 318],
  formulaUnit: '°C',
}

const mean = {
  symbol: 'T',
  kind: 'temperature',
  tex: '\\frac{@tmax + @tmin}{2}',
  formulaUnit: '°C',
} as const

/**
 * Reference evapotranspiration of a mean day, m/s, by Penman–Monteith; steps as in FAO-56 chapters
 * 3 and 4.
 */
export const evapotranspiration = calculation({
  id: 'evapotranspiration',
  sources: ['fao-56'],
  inputs: {
    tmax,
    tmin,
    latitude: latitudeInput,
    day: dayInput,
    humidity: { symbol: 'RH', kind: 'share', range: [0.05, 1], formulaUnit: '' },
    wind: { symbol: 'u', kind: 'wind', range: [0, 27], formulaUnit: 'm/s' },
    height: { symbol: 'z', kind: 'width', range: [0.5, 16], formulaUnit: 'm' },
    sun: { symbol: 'n', kind: 'hours', range: [0, secondsPerDay], formulaUnit: 'h' },
    elevation: { symbol: 'h', kind: 'elevation', range: [-430, 4600], formulaUnit: 'm' },
  },
  outputs: {
    mean,
    wind2: {
      symbol: 'u_2',
      kind: 'wind',
      tex: '@wind\\,\\frac{4.87}{\\ln(67.8\\,@height - 5.42)}',
      formulaUnit: 'm/s',
    },
    gamma: {
      symbol: '\\gamma',
      kind: 'vapor',
      tex: '0.000665 \\cdot 101.3\\left(\\frac{293 - 0.0065\\,@elevation}{293}\\right)^{5.26}',
      formulaUnit: 'kPa',
    },
    slope: {
      symbol: '\\Delta',
      kind: 'vapor',
      tex: '\\frac{4098 \\cdot 0.6108\\,\\exp\\left(\\frac{17.27\\,@mean}{@mean + 237.3}\\right)}{\\left(@mean + 237.3\\right)^2}',
      formulaUnit: 'kPa',
    },
    saturated: {
      symbol: 'e_s',
      kind: 'vapor',
      tex: '\\tfrac{1}{2} \\cdot 0.6108\\left(\\exp\\left(\\frac{17.27\\,@tmax}{@tmax + 237.3}\\right) + \\exp\\left(\\frac{17.27\\,@tmin}{@tmin + 237.3}\\right)\\right)',
      formulaUnit: 'kPa',
    },
    actual: { symbol: 'e_a', kind: 'vapor', tex: '@humidity\\,@saturated', formulaUnit: 'kPa' },
    ...aboveOutputs,
    hours: { symbol: 'N', kind: 'hours', tex: '\\frac{24}{\\pi}\\,@sunset', formulaUnit: 'h' },
    solar: {
      symbol: 'R_s',
      kind: 'radiation',
      tex: '\\left(0.25 + 0.50\\,\\min\\left(\\frac{@sun}{@hours},\\,1\\right)\\right) @above',
      formulaUnit: 'MJ/m2',
    },
    clear: {
      symbol: 'R_{so}',
      kind: 'radiation',
      tex: '\\left(0.75 + 0.00002\\,@elevation\\right) @above',
      formulaUnit: 'MJ/m2',
    },
    longwave: {
      symbol: 'R_{nl}',
      kind: 'radiation',
      tex: '\\frac{4.903 \\cdot 10^{-9}}{2}\\left(\\left(@tmax + 273.16\\right)^4 + \\left(@tmin + 273.16\\right)^4\\right)\\left(0.34 - 0.14\\sqrt{@actual}\\right)\\left(1.35\\,\\min\\left(\\frac{@solar}{@clear},\\,1\\right) - 0.35\\right)',
      formulaUnit: 'MJ/m2',
    },
    net: {
      symbol: 'R_n',
      kind: 'radiation',
      tex: '0.77\\,@solar - @longwave',
      formulaUnit: 'MJ/m2',
    },
    rate: {
      symbol: 'ET_o',
      kind: 'dailyWater',
      tex: '\\frac{0.408\\,@slope\\,@net + @gamma\\,\\frac{900}{@mean + 273}\\,@wind2\\,(@saturated - @actual)}{@slope + @gamma\\,(1 + 0.34\\,@wind2)}',
      formulaUnit: 'mm/day',
    },
  },
  terms: yearDayTerms,
  refusals: ['high-below-low', 'more-sun-than-daylight', 'nothing-evaporates'],
  compute: (x) => {
    const [hot, cold, hours] = [celsius(x.tmax), celsius(x.tmin), x.sun / 3600]
    const length = hoursOf(x)
    const { above, ...sky } = aboveSteps(x)
    const wind = windAtTwoMeters(x.wind, x.height)
    const gamma = psychrometric(airPressure(x.elevation))
    const always = { ...sky, above, hours: length * 3600, wind2: wind, gamma: gamma * 1000 }
    const mean = (x.tmax + x.tmin) / 2
    const clear = clearSky(above, x.elevation)
    if (hot < cold || hours > length + 0.5) {
      const no = refuse(hot < cold ? 'high-below-low' : 'more-sun-than-daylight')
      const none = { slope: no, saturated: no, actual: no, solar: no, longwave: no, net: no }
      return { ...always, mean, clear, ...none, rate: no }
    }
    const solar = solarFromSunshine(above, Math.min(hours, length), length)
    const ea = vaporFromMean(hot, cold, x.humidity)
    const es = meanSaturation(hot, cold)
    const longwave = netLongWave(hot, cold, ea, solar, clear) * 1e6
    const net = netShortWave(solar) - longwave
    const delta = saturationSlope((hot + cold) / 2)
    const air = { t: celsius(mean), u2: wind, es, ea, delta, gamma }
    const eto = penmanMonteith({ rn: net / 1e6, g: 0, ...air })
    return {
      ...always,
      mean,
      slope: delta * 1000,
      saturated: es * 1000,
      actual: ea * 1000,
      solar,
      clear,
      longwave,
      net,
      rate: eto > 0 ? perDay(eto) : refuse('nothing-evaporates'),
    }
  },
})

/** The same, m/s, where only temperatures are known: FAO-56 Eq. 52 (Hargreaves). */
export const evapotranspirationByTemperature = calculation({
  id: 'evapotranspiration-by-temperature',
  sources: ['fao-56'],
  inputs: { tmax, tmin, latitude: latitudeInput, day: dayInput },
  outputs: {
    mean,
    ...aboveOutputs,
    rate: {
      symbol: 'ET_o',
      kind: 'dailyWater',
      tex: '0.0023\\left(@mean + 17.8\\right)\\sqrt{@tmax - @tmin} \\cdot 0.408\\,@above',
      formulaUnit: 'mm/day',
    },
  },
  terms: yearDayTerms,
  refusals: ['high-below-low'],
  compute: (x) => {
    const [hot, cold] = [celsius(x.tmax), celsius(x.tmin)]
    const { above, ...sky } = aboveSteps(x)
    return {
      mean: (x.tmax + x.tmin) / 2,
      ...sky,
      above,
      rate: hot > cold ? perDay(hargreaves(above / 1e6, hot, cold)) : refuse('high-below-low'),
    }
  },
})
