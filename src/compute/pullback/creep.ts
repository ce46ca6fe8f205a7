import { secondsPerDay } from '../../model/day.ts'
import { calculation } from '../calculation.ts'
import { workedWeightInput } from '../cushion/cushion-inputs.ts'
import { areaInput, railLengthInput } from '../oval/oval-inputs.ts'

/** Cushion that traffic and harrows bring down the slope to the rail in a day. */
export const creep = calculation({
  id: 'creep',
  inputs: {
    rail: railLengthInput,
    area: areaInput,
    width: { symbol: 'w', kind: 'smallWidth', range: [0.005, 0.7] },
    height: { symbol: 'h', kind: 'fineDepth', range: [0.002, 0.2] },
    unitWeight: workedWeightInput,
    days: { symbol: 'n', kind: 'days', range: [secondsPerDay, 60 * secondsPerDay] },
  },
  outputs: {
    volume: {
      symbol: 'V',
      kind: 'heap',
      tex: '\\tfrac{1}{2} \\cdot @width \\cdot @height \\cdot @rail',
    },
    mass: { symbol: 'M', kind: 'patchMass', tex: '@volume \\cdot @unitWeight' },
    depth: { symbol: 'd', kind: 'thinDepth', tex: '\\frac{@volume}{@area}' },
    left: { symbol: 'V_n', kind: 'heap', tex: '\\frac{@days}{1\\,\\text{day}} \\cdot @volume' },
    ridge: {
      symbol: 'h_n',
      kind: 'fineDepth',
      tex: '@height \\sqrt{\\frac{@days}{1\\,\\text{day}}}',
    },
  },
  sources: ['geometry', 'common-practice'],
  compute: ({ rail, area, width, height, unitWeight, days }) => {
    const volume = 0.5 * width * height * rail
    return {
      volume,
      mass: volume * unitWeight,
      depth: volume / area,
      left: (days / secondsPerDay) * volume,
      ridge: height * Math.sqrt(days / secondsPerDay),
    }
  },
})
