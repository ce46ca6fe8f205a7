import { roundTo } from '../../model/quantity/format-quantity.ts'
import { calculation, refuse } from '../calculation.ts'

/**
 * What can be harrowed between two races: free time (s), whole laps, and the width (m) that they
 * cover from the rail.
 */
export const betweenRaces = calculation({
  id: 'between-races',
  sources: ['common-practice', 'geometry'],
  inputs: {
    interval: { symbol: 't_i', kind: 'minutes', range: [60, 14_400] },
    clear: { symbol: 't_c', kind: 'minutes', range: [0, 7200] },
    whole: { symbol: 't_w', kind: 'duration', range: [60, 1e6] },
    laps: { symbol: 'n_w', kind: 'whole', range: [1, 1000] },
    gain: { symbol: 'b', kind: 'width', range: [0.1, 20] },
  },
  outputs: {
    free: { symbol: 't', kind: 'minutes', tex: '@interval - @clear', round: 'down' },
    lap: { symbol: 't_1', kind: 'minutes', tex: '\\frac{@whole}{@laps}' },
    laps: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\min\\left(n_w,\\,\\left\\lfloor \\frac{@free}{@lap} \\right\\rfloor\\right)',
    },
    width: { symbol: 'w', kind: 'width', tex: 'n\\,@gain', round: 'down' },
  },
  refusals: ['interval-too-short'],
  compute: (x) => {
    const free = x.interval - x.clear
    if (!(free > 0)) {
      const no = refuse('interval-too-short')
      return { free: no, lap: x.whole / x.laps, laps: no, width: no }
    }
    const laps = Math.min(x.laps, roundTo(free / (x.whole / x.laps), { step: 1, mode: 'down' }))
    return { free, lap: x.whole / x.laps, laps, width: laps * x.gain }
  },
})
