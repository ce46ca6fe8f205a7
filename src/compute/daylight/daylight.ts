import { calculation, refuse } from '../calculation.ts'
import { daylightSteps } from './daylight-steps.ts'
import { civilTwilight, horizon, sunEvent, sunPlaceOf } from './sun.ts'

/**
 * Sunrise, sunset and the ends of civil twilight of a day, s after local midnight. The steps
 * stand in a table, since each of the four has its own sun.
 */
export const daylight = calculation({
  id: 'daylight',
  sources: ['noaa-sun'],
  inputs: {
    latitude: { symbol: '\\varphi', kind: 'fineAngle', range: [-1.16, 1.16] },
    longitude: { symbol: '\\lambda', kind: 'fineAngle', range: [-Math.PI, Math.PI] },
    day: { symbol: 'D', kind: 'date', range: [0, 60_000] },
    zone: { symbol: 'z', kind: 'hours', range: [-43_200, 50_400] },
  },
  outputs: {
    dawn: {
      symbol: 't_1',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{H_1 + @longitude}{15°/\\text{h}} - E_1 + @zone',
      restsOn: 'all',
    },
    rise: {
      symbol: 't_2',
      kind: 'clock',
      tex: '12\\,\\text{h} - \\frac{H_2 + @longitude}{15°/\\text{h}} - E_2 + @zone',
      restsOn: 'all',
    },
    set: {
      symbol: 't_3',
      kind: 'clock',
      tex: '12\\,\\text{h} + \\frac{H_3 - @longitude}{15°/\\text{h}} - E_3 + @zone',
      restsOn: 'all',
    },
    dusk: {
      symbol: 't_4',
      kind: 'clock',
      tex: '12\\,\\text{h} + \\frac{H_4 - @longitude}{15°/\\text{h}} - E_4 + @zone',
      restsOn: 'all',
    },
  },
  refusals: ['no-sunrise'],
  steps: { sun: daylightSteps },
  compute: (x) => {
    const place = sunPlaceOf(x)
    const at = (side: -1 | 1, zenith: number) => {
      const event = sunEvent(place, side, zenith)
      return event ? event.minutes * 60 : refuse('no-sunrise')
    }
    return {
      dawn: at(-1, civilTwilight),
      rise: at(-1, horizon),
      set: at(1, horizon),
      dusk: at(1, civilTwilight),
    }
  },
})
