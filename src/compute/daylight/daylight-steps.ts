import { dayNumber, dayOf } from '../../model/day.ts'
import type { Steps } from '../calculation.ts'
import {
  civilTwilight,
  horizon,
  julianCentury,
  type SunEvent,
  sunEvent,
  sunPlaceOf,
} from './sun.ts'

/** The four events in the order of the day: symbol of its time, side of noon, zenith angle. */
const events = [
  { symbol: 't_1', side: -1, zenith: civilTwilight },
  { symbol: 't_2', side: -1, zenith: horizon },
  { symbol: 't_3', side: 1, zenith: horizon },
  { symbol: 't_4', side: 1, zenith: civilTwilight },
] as const

type Line = {
  readonly tex: string
  readonly of: (event: SunEvent, day: number) => number
}

const centuryOf = ({ moment }: SunEvent, day: number): number => julianCentury(dayOf(day), moment)

const square = (x: number): number => x * x

/** NOAA's steps with their numbers; angles in degrees. */
const lines: readonly Line[] = [
  { tex: 'n', of: (_, day) => day - dayNumber('2000-01-01') },
  { tex: 'u', of: ({ moment }) => moment / 1440 },
  { tex: 'T = \\frac{n - 0.5 + u}{36525}', of: centuryOf },
  {
    tex: 'L = 280.46646 + 36000.76983\\,T + 0.0003032\\,T^2 - 360\\,k',
    of: ({ sun }) => sun.meanLongitude,
  },
  {
    tex: 'M = 357.52911 + 35999.05029\\,T - 0.0001537\\,T^2 - 360\\,k',
    of: ({ sun }) => sun.meanAnomaly % 360,
  },
  {
    tex: 'e = 0.016708634 - 0.000042037\\,T - 0.0000001267\\,T^2',
    of: ({ sun }) => sun.eccentricity,
  },
  {
    tex: 'C = \\left(1.914602 - 0.004817\\,T - 0.000014\\,T^2\\right)\\sin M + \\left(0.019993 - 0.000101\\,T\\right)\\sin 2M + 0.000289\\,\\sin 3M',
    of: ({ sun }) => sun.center,
  },
  {
    tex: '\\omega = 125.04 - 1934.136\\,T',
    of: (event, day) => 125.04 - 1934.136 * centuryOf(event, day),
  },
  {
    tex: '\\lambda_s = L + C - 0.00569 - 0.00478\\,\\sin\\omega',
    of: ({ sun }) => sun.apparentLongitude,
  },
  {
    tex: '\\alpha = 23.439291 - 0.0130042\\,T - 0.00000016\\,T^2 + 0.0000005\\,T^3 + 0.00256\\,\\cos\\omega',
    of: ({ sun }) => sun.obliquity,
  },
  {
    tex: '\\sin\\delta = \\sin\\alpha\\,\\sin\\lambda_s,\\; \\delta',
    of: ({ sun }) => sun.declination,
  },
  {
    tex: 'y = \\tan^2\\frac{\\alpha}{2}',
    of: ({ sun }) => square(Math.tan((sun.obliquity * Math.PI) / 360)),
  },
  {
    tex: 'E = \\frac{720}{\\pi}\\left(y\\,\\sin 2L - 2\\,e\\,\\sin M + 4\\,e\\,y\\,\\sin M\\,\\cos 2L - 0.5\\,y^2\\,\\sin 4L - 1.25\\,e^2\\,\\sin 2M\\right)\\,\\text{min}',
    of: ({ sun }) => sun.equationOfTime,
  },
]

const hourAngle =
  '\\cos H = \\frac{\\cos z_0}{\\cos\\varphi\\,\\cos\\delta} - \\tan\\varphi\\,\\tan\\delta,\\; H'

/** Every step to first light, sunrise, sunset and last light, each worked at its own moment. */
export function daylightSteps(x: Parameters<typeof sunPlaceOf>[0]): Steps {
  const place = sunPlaceOf(x)
  const day = Math.round(x.day)
  const found = events.map(({ side, zenith }) => sunEvent(place, side, zenith))
  const put = (of: Line['of']) => found.map((event) => (event ? of(event, day) : ''))
  return {
    columns: [{ symbol: '' }, ...events.map(({ symbol }) => ({ symbol }))],
    rows: [
      ...lines.map(({ tex, of }) => [tex, ...put(of)]),
      ['z_0', ...events.map(({ zenith }) => zenith)],
      [hourAngle, ...put(({ angle }) => angle)],
    ],
  }
}
