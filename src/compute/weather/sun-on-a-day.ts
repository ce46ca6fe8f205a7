import { dayOf, dayOfYear } from '../../model/day.ts'
import { daylightHours, declination, sunsetAngle } from '../../model/day-length.ts'
import type { InputSpec, OutputSpec } from '../calculation.ts'
import { extraterrestrial, sunDistance } from './radiation.ts'

/** Where the sun stands on a day: the steps of FAO-56, chapter 3, that several calculations begin with. */

export const latitudeInput: InputSpec = {
  symbol: '\\varphi',
  kind: 'fineAngle',
  range: [-1.16, 1.16],
  formulaUnit: 'rad',
}

export const dayInput: InputSpec = { symbol: 'D', kind: 'date', range: [0, 60_000] }

/** Place of a numbered day in its year. */
const yearDay = (day: number): number => dayOfYear(dayOf(Math.round(day)))

/** The word in the formula of the day's number. */
export const yearDayTerms = ['day-of-year'] as const

const number: OutputSpec = {
  symbol: 'J',
  kind: 'count',
  tex: '\\text{day-of-year}\\left(@day\\right)',
}
const tilt: OutputSpec = {
  symbol: '\\delta',
  kind: 'fineAngle',
  tex: '0.409\\,\\sin\\left(\\frac{2\\pi}{365}\\,@number - 1.39\\right)',
  formulaUnit: 'rad',
}
const sunset: OutputSpec = {
  symbol: '\\omega_s',
  kind: 'fineAngle',
  tex: '\\arccos\\left(-\\tan\\left(@latitude\\right)\\tan\\left(@tilt\\right)\\right)',
  formulaUnit: 'rad',
}

/** Steps to the length of the day. */
export const dayLengthOutputs = { number, tilt, sunset } as const

/** Steps to the radiation above the air. */
export const aboveOutputs = {
  ...dayLengthOutputs,
  nearness: {
    symbol: 'd_r',
    kind: 'ratio',
    tex: '1 + 0.033\\,\\cos\\left(\\frac{2\\pi}{365}\\,@number\\right)',
  },
  above: {
    symbol: 'R_a',
    kind: 'radiation',
    tex: '\\frac{1440}{\\pi} \\cdot 0.0820\\,@nearness\\left(@sunset\\,\\sin\\left(@latitude\\right)\\sin\\left(@tilt\\right) + \\cos\\left(@latitude\\right)\\cos\\left(@tilt\\right)\\sin\\left(@sunset\\right)\\right)',
    formulaUnit: 'MJ/m2',
  },
} as const satisfies Readonly<Record<string, OutputSpec>>

type Place = { readonly latitude: number; readonly day: number }

export const dayLengthSteps = ({ latitude, day }: Place) => {
  const number = yearDay(day)
  return {
    number,
    tilt: declination(number),
    sunset: sunsetAngle(latitude, number),
  }
}

export const aboveSteps = (place: Place) => {
  const { number, ...angles } = dayLengthSteps(place)
  return {
    number,
    ...angles,
    nearness: sunDistance(number),
    above: extraterrestrial(place.latitude, number) * 1e6,
  }
}

/** Hours from sunrise to sunset, by geometry. */
export const hoursOf = ({ latitude, day }: Place): number => daylightHours(latitude, yearDay(day))
