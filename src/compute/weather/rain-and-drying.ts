import { secondsPerDay } from '../../model/day.ts'
import { inch } from '../../model/quantity/units.ts'
import { calculation } from '../calculation.ts'
import { depthTargetInput, workedWeightInput } from '../cushion/cushion-inputs.ts'
import { retention, runoffDepth } from './runoff.ts'
import { wetSurface } from './wet-surface.ts'

/** Water, kg/m³. */
const water = 1000
const curve = (symbol: string) =>
  ({
    symbol,
    kind: 'count',
    range: [30, 100],
  }) as const

/**
 * Rain on an open and on a closed track: what soaks in (m of water), and the daylight (s) until the
 * cushion is workable again.
 */
export const rainAndDrying = calculation({
  id: 'rain-and-drying',
  sources: ['nrcs-tr-55', 'fao-56'],
  inputs: {
    rain: { symbol: 'P', kind: 'waterDepth', range: [0.0005, 0.3], formulaUnit: 'in' },
    open: curve('CN_o'),
    closed: curve('CN_c'),
    depth: depthTargetInput,
    unitWeight: workedWeightInput,
    target: { symbol: 'w', kind: 'fineShare', range: [0, 0.5] },
    held: { symbol: 'w_h', kind: 'fineShare', range: [0, 0.6] },
    rate: { symbol: 'ET_o', kind: 'dailyWater', range: [1e-10, 3e-7] },
    daylight: { symbol: 'N', kind: 'hours', range: [3600, secondsPerDay] },
  },
  outputs: {
    room: {
      symbol: 'R',
      kind: 'waterDepth',
      tex: '\\max(0,\\,@held - @target)\\,@depth\\,\\frac{@unitWeight}{\\rho_{water}}',
    },
    'open-runs': {
      symbol: 'Q_o',
      kind: 'waterDepth',
      formulaUnit: 'in',
      tex: '\\frac{(@rain - 0.2\\,S_o)^2}{@rain + 0.8\\,S_o},\\quad S_o = \\frac{1000}{@open} - 10',
    },
    'closed-runs': {
      symbol: 'Q_c',
      kind: 'waterDepth',
      formulaUnit: 'in',
      tex: '\\frac{(@rain - 0.2\\,S_c)^2}{@rain + 0.8\\,S_c},\\quad S_c = \\frac{1000}{@closed} - 10',
    },
    'open-in': { symbol: 'I_o', kind: 'waterDepth', tex: '\\min(@rain - Q_o,\\,R)' },
    'closed-in': { symbol: 'I_c', kind: 'waterDepth', tex: '\\min(@rain - Q_c,\\,R)' },
    'open-hours': {
      symbol: 't_o',
      kind: 'hours',
      tex: '\\frac{I_o\\,@daylight}{1.2\\,@rate \\cdot 1\\,\\text{day}}',
    },
    'closed-hours': {
      symbol: 't_c',
      kind: 'hours',
      tex: '\\frac{I_c\\,@daylight}{1.2\\,@rate \\cdot 1\\,\\text{day}}',
    },
  },
  compute: (x) => {
    const runs = (number: number): number => runoffDepth(x.rain / inch, retention(number)) * inch
    const room = (Math.max(0, x.held - x.target) * x.depth * x.unitWeight) / water
    const [openRuns, closedRuns] = [runs(x.open), runs(x.closed)]
    const [openIn, closedIn] = [
      Math.min(x.rain - openRuns, room),
      Math.min(x.rain - closedRuns, room),
    ]
    const hours = (depth: number): number =>
      (depth * x.daylight) / (wetSurface * x.rate * secondsPerDay)
    return {
      room,
      'open-runs': openRuns,
      'closed-runs': closedRuns,
      'open-in': openIn,
      'closed-in': closedIn,
      'open-hours': hours(openIn),
      'closed-hours': hours(closedIn),
    }
  },
})
