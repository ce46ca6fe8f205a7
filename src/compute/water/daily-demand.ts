import { secondsPerDay } from '../../model/day.ts'
import { calculation } from '../calculation.ts'
import { wetSurface } from '../weather/wet-surface.ts'
import { wholeUp } from '../whole-up.ts'
import { extra } from './moisture.ts'

/**
 * Water (m³) and whole loads that replace what a surface kept wet loses in a day, everywhere: what
 * falls twice on the overlaps comes on top.
 */
export const dailyDemand = calculation({
  id: 'daily-demand',
  sources: ['fao-56'],
  inputs: {
    rate: { symbol: 'ET_o', kind: 'dailyWater', range: [0, 3e-7] },
    area: { symbol: 'A', kind: 'area', range: [500, 200_000] },
    extra,
    load: { symbol: 'V_1', kind: 'waterVolume', range: [0.01, 60] },
  },
  outputs: {
    water: {
      symbol: 'V',
      kind: 'waterVolume',
      tex: '1.2\\,@rate \\cdot 1\\,\\text{day} \\cdot @extra \\cdot @area',
      round: 'up',
    },
    loads: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil',
    },
  },
  compute: (x) => {
    const water = wetSurface * x.rate * secondsPerDay * x.extra * x.area
    return { water, loads: wholeUp(water / x.load) }
  },
})
