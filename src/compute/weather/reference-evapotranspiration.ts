import { secondsPerDay } from '../../model/day.ts'
import { daylightHours } from '../../model/day-length.ts'
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
import {
  clearSky,
  extraterrestrial,
  netLongWave,
  netShortWave,
  solarFromSunshine,
} from './radiation.ts'

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
const latitude: InputSpec = { symbol: '\\varphi', kind: 'fineAngle', range: [-1.16, 1.16] }
const day: InputSpec = { symbol: 'J', kind: 'count', range: [1, 366] }

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
    latitude,
    day,
    humidity: { symbol: 'RH', kind: 'share', range: [0.05, 1], formulaUnit: '' },
    wind: { symbol: 'u', kind: 'wind', range: [0, 27], formulaUnit: 'm/s' },
    height: { symbol: 'z', kind: 'width', range: [0.5, 16], formulaUnit: 'm' },
    sun: { symbol: 'n', kind: 'hours', range: [0, secondsPerDay], formulaUnit: 'h' },
    elevation: { symbol: 'h', kind: 'elevation', range: [-430, 4600], formulaUnit: 'm' },
  },
  outputs: {
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
      tex: '\\frac{4098 \\cdot 0.6108\\,\\exp\\left(\\frac{17.27\\,T}{T + 237.3}\\right)}{(T + 237.3)^2},\\; T = \\frac{@tmax + @tmin}{2}',
      formulaUnit: 'kPa',
    },
    saturated: {
      symbol: 'e_s',
      kind: 'vapor',
      tex: '\\tfrac{1}{2}\\left(e(@tmax) + e(@tmin)\\right),\\; e(T) = 0.6108\\,\\exp\\frac{17.27\\,T}{T + 237.3}',
      formulaUnit: 'kPa',
    },
    actual: { symbol: 'e_a', kind: 'vapor', tex: '@humidity\\,@saturated', formulaUnit: 'kPa' },
    net: {
      symbol: 'R_n',
      kind: 'radiation',
      tex: '0.77\\,R_s - R_{nl},\\; R_s = \\left(0.25 + 0.50\\,\\frac{@sun}{N}\\right) R_a',
      restsOn: ['sun', 'tmax', 'tmin', 'humidity', 'elevation', 'latitude', 'day'],
      formulaUnit: 'MJ/m2',
    },
    rate: {
      symbol: 'ET_o',
      kind: 'dailyWater',
      tex: '\\frac{0.408\\,@slope\\,@net + @gamma\\,\\frac{900}{T + 273}\\,@wind2\\,(@saturated - @actual)}{@slope + @gamma\\,(1 + 0.34\\,@wind2)}',
    },
  },
  refusals: ['high-below-low', 'more-sun-than-daylight', 'nothing-evaporates'],
  compute: (x) => {
    const [hot, cold, hours] = [celsius(x.tmax), celsius(x.tmin), x.sun / 3600]
    const length = daylightHours(x.latitude, x.day)
    if (hot < cold || hours > length + 0.5) {
      const no = refuse(hot < cold ? 'high-below-low' : 'more-sun-than-daylight')
      return { wind2: no, gamma: no, slope: no, saturated: no, actual: no, net: no, rate: no }
    }
    const ra = extraterrestrial(x.latitude, x.day)
    const rs = solarFromSunshine(ra, Math.min(hours, length), length)
    const ea = vaporFromMean(hot, cold, x.humidity)
    const es = meanSaturation(hot, cold)
    const rn = netShortWave(rs) - netLongWave(hot, cold, ea, rs, clearSky(ra, x.elevation))
    const u2 = windAtTwoMeters(x.wind, x.height)
    const gamma = psychrometric(airPressure(x.elevation))
    const delta = saturationSlope((hot + cold) / 2)
    const eto = penmanMonteith({ rn, g: 0, t: (hot + cold) / 2, u2, es, ea, delta, gamma })
    return {
      wind2: u2,
      gamma: gamma * 1000,
      slope: delta * 1000,
      saturated: es * 1000,
      actual: ea * 1000,
      net: rn * 1e6,
      rate: eto > 0 ? perDay(eto) : refuse('nothing-evaporates'),
    }
  },
})

/** The same, m/s, where only temperatures are known: FAO-56 Eq. 52 (Hargreaves). */
export const evapotranspirationByTemperature = calculation({
  id: 'evapotranspiration-by-temperature',
  sources: ['fao-56'],
  inputs: { tmax, tmin, latitude, day },
  outputs: {
    rate: {
      symbol: 'ET_o',
      kind: 'dailyWater',
      tex: '0.0023\\left(\\frac{@tmax + @tmin}{2} + 17.8\\right)\\sqrt{@tmax - @tmin} \\cdot 0.408\\,R_a',
      restsOn: 'all',
    },
  },
  refusals: ['high-below-low'],
  compute: (x) => {
    const [hot, cold] = [celsius(x.tmax), celsius(x.tmin)]
    return {
      rate:
        hot > cold
          ? perDay(hargreaves(extraterrestrial(x.latitude, x.day), hot, cold))
          : refuse('high-below-low'),
    }
  },
})
