import { dayOf } from '../../model/day.ts'
import { calculation, refuse } from '../calculation.ts'
import { civilTwilight, horizon, sunTimes } from './sun.ts'

/** Sunrise, sunset and the ends of civil twilight of a day, s after local midnight. */
export const daylight = calculation({
  id: 'daylight',
  sources: ['noaa-sun'],
  inputs: {
    latitude: { symbol: '\\varphi', kind: 'fineAngle', range: [-1.16, 1.16] },
    longitude: { symbol: '\\lambda', kind: 'fineAngle', range: [-Math.PI, Math.PI] },
    day: { symbol: 'D', kind: 'count', range: [0, 60_000] },
    zone: { symbol: 'z', kind: 'hours', range: [-43_200, 50_400] },
  },
  outputs: {
    dawn: {
      symbol: 't_1',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude + H_{96}}{15°/\\text{h}} - E + @zone',
      restsOn: 'all',
    },
    rise: {
      symbol: 't_2',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude + H_{90.83}}{15°/\\text{h}} - E + @zone',
      restsOn: 'all',
    },
    set: {
      symbol: 't_3',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude - H_{90.83}}{15°/\\text{h}} - E + @zone',
      restsOn: 'all',
    },
    dusk: {
      symbol: 't_4',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{@longitude - H_{96}}{15°/\\text{h}} - E + @zone',
      restsOn: 'all',
    },
  },
  refusals: ['no-sunrise'],
  compute: (x) => {
    const date = dayOf(x.day)
    const degrees = (radians: number): number => (radians * 180) / Math.PI
    const at = (zenith: number) =>
      sunTimes(date, degrees(x.latitude), degrees(x.longitude), x.zone / 3600, zenith)
    const [sun, light] = [at(horizon), at(civilTwilight)]
    const no = refuse('no-sunrise')
    return {
      dawn: light ? light.rise * 60 : no,
      rise: sun ? sun.rise * 60 : no,
      set: sun ? sun.set * 60 : no,
      dusk: light ? light.set * 60 : no,
    }
  },
})
