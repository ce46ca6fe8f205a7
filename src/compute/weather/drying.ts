import { secondsPerDay } from '../../model/day.ts'
import { calculation, refuse } from '../calculation.ts'
import {
  dayInput,
  dayLengthOutputs,
  dayLengthSteps,
  latitudeInput,
  yearDayTerms,
} from './sun-on-a-day.ts'
import { wetSurface } from './wet-surface.ts'

/**
 * How long a pass of water lasts in the middle of a usual day. The day's evaporation follows the
 * sun: a half sine over the daylight, so that its middle hour draws π/2 times the mean of the
 * daylight hours.
 */
export const drying = calculation({
  id: 'drying',
  sources: ['fao-56', 'geometry'],
  inputs: {
    rate: { symbol: 'ET_o', kind: 'dailyWater', range: [0, 3e-7] },
    depth: { symbol: 'd', kind: 'waterDepth', range: [0.0001, 0.013] },
    latitude: latitudeInput,
    day: dayInput,
  },
  outputs: {
    ...dayLengthOutputs,
    daylight: {
      symbol: 'N',
      kind: 'hours',
      tex: '\\frac{24\\,\\text{h}}{\\pi}\\,@sunset',
    },
    peak: {
      symbol: 'E',
      kind: 'hourlyWater',
      tex: '1.2\\,@rate \\cdot 1\\,\\text{day}\\,\\frac{\\pi}{2\\,@daylight}',
    },
    hours: { symbol: 't', kind: 'duration', tex: '\\frac{@depth}{@peak}', round: 'down' },
  },
  terms: yearDayTerms,
  refusals: ['nothing-dries'],
  compute: (x) => {
    const steps = dayLengthSteps(x)
    const daylight = (steps.sunset * secondsPerDay) / Math.PI
    const peak = (wetSurface * x.rate * secondsPerDay * Math.PI) / (2 * daylight)
    if (!(daylight > 0 && peak > 0)) {
      const no = refuse('nothing-dries')
      return { ...steps, daylight, peak: no, hours: no }
    }
    return { ...steps, daylight, peak, hours: x.depth / peak }
  },
})
