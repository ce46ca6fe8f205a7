import { secondsPerDay } from '../../model/day.ts'
import { daylightHours } from '../../model/day-length.ts'
import { calculation, refuse } from '../calculation.ts'
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
    latitude: { symbol: '\\varphi', kind: 'fineAngle', range: [-1.16, 1.16] },
    day: { symbol: 'J', kind: 'count', range: [1, 366] },
  },
  outputs: {
    daylight: {
      symbol: 'N',
      kind: 'hours',
      tex: '\\frac{24\\,\\text{h}}{\\pi}\\,\\omega_s(@latitude,\\,@day)',
    },
    peak: {
      symbol: 'E',
      kind: 'hourlyWater',
      tex: '1.2\\,@rate \\cdot 1\\,\\text{day}\\,\\frac{\\pi}{2\\,@daylight}',
    },
    hours: { symbol: 't', kind: 'duration', tex: '\\frac{@depth}{@peak}', round: 'down' },
  },
  refusals: ['nothing-dries'],
  compute: (x) => {
    const daylight = daylightHours(x.latitude, x.day) * 3600
    const peak = (wetSurface * x.rate * secondsPerDay * Math.PI) / (2 * daylight)
    if (!(daylight > 0 && peak > 0)) {
      const no = refuse('nothing-dries')
      return { daylight, peak: no, hours: no }
    }
    return { daylight, peak, hours: x.depth / peak }
  },
})
