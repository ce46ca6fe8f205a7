import { dayOf } from '../../model/day.ts'
import { calculation, refuse } from '../calculation.ts'
import { civilTwilight, horizon, sunTimes } from './sun.ts'

/** Sunrise, sunset and the ends of civil twilight of a day, s after local midnight. */
export const daylight = calculation({
  id: 'daylight',
  title: 'Daylight on the first race day',
  about:
    'Work between dusk and dawn needs lights and a rule of its own. Within civil twilight there is light enough to see a person without lamps in clear weather.',
  sources: ['noaa-sun'],
  inputs: {
    latitude: { symbol: '\\varphi', label: 'latitude', kind: 'fineAngle', range: [-1.16, 1.16] },
    longitude: {
      symbol: '\\lambda',
      label: 'longitude, east positive',
      kind: 'fineAngle',
      range: [-Math.PI, Math.PI],
    },
    day: { symbol: 'D', label: 'day, counted from 1970', kind: 'count', range: [0, 60_000] },
    zone: {
      symbol: 'z',
      label: 'clock ahead of Universal Time',
      kind: 'hours',
      range: [-43_200, 50_400],
    },
  },
  outputs: {
    dawn: {
      symbol: 't_1',
      label: 'first light',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude + H_{96}}{15°/\\text{h}} - E + @zone',
    },
    rise: {
      symbol: 't_2',
      label: 'sunrise',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude + H_{90.83}}{15°/\\text{h}} - E + @zone',
    },
    set: {
      symbol: 't_3',
      label: 'sunset',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude - H_{90.83}}{15°/\\text{h}} - E + @zone',
    },
    dusk: {
      symbol: 't_4',
      label: 'last light',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude - H_{96}}{15°/\\text{h}} - E + @zone',
    },
  },
  compute: (x) => {
    const date = dayOf(x.day)
    const degrees = (radians: number): number => (radians * 180) / Math.PI
    const at = (zenith: number) =>
      sunTimes(date, degrees(x.latitude), degrees(x.longitude), x.zone / 3600, zenith)
    const [sun, light] = [at(horizon), at(civilTwilight)]
    const no = refuse('the sun does not rise and set on that day')
    return {
      dawn: light ? light.rise * 60 : no,
      rise: sun ? sun.rise * 60 : no,
      set: sun ? sun.set * 60 : no,
      dusk: light ? light.set * 60 : no,
    }
  },
})
