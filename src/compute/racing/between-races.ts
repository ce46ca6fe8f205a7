import { roundTo } from '../../model/quantity/format-quantity.ts'
import { calculation, refuse } from '../calculation.ts'

/**
 * What can be harrowed between two races: free time (s), whole laps, and the width (m) that they
 * cover from the rail.
 */
export const betweenRaces = calculation({
  id: 'between-races',
  title: 'What can be harrowed between two races',
  about:
    'From the interval comes off the time in which horses leave the track and come onto it again. What is left is good for so many whole laps, laid outward from the rail, where the track is used most.',
  sources: ['common-practice', 'geometry'],
  inputs: {
    interval: {
      symbol: 't_i',
      label: 'time from race to race',
      kind: 'minutes',
      range: [60, 14_400],
    },
    clear: {
      symbol: 't_c',
      label: 'time in which horses leave the track and come on again',
      kind: 'minutes',
      range: [0, 7200],
    },
    whole: {
      symbol: 't_w',
      label: 'harrowing the whole width',
      kind: 'duration',
      range: [60, 1e6],
    },
    laps: { symbol: 'n_w', label: 'laps for the whole width', kind: 'whole', range: [1, 1000] },
    gain: { symbol: 'b', label: 'width that one lap adds', kind: 'width', range: [0.1, 20] },
  },
  outputs: {
    free: {
      symbol: 't',
      label: 'free for work between two races',
      kind: 'minutes',
      tex: '@interval - @clear',
      round: 'down',
    },
    lap: { symbol: 't_1', label: 'for one lap', kind: 'minutes', tex: '\\frac{@whole}{@laps}' },
    laps: {
      symbol: 'n',
      label: 'laps that fit',
      kind: 'whole',
      tex: '\\min\\left(n_w,\\,\\left\\lfloor \\frac{@free}{@lap} \\right\\rfloor\\right)',
    },
    width: {
      symbol: 'w',
      label: 'from the rail outward',
      kind: 'width',
      tex: 'n\\,@gain',
      round: 'down',
    },
  },
  compute: (x) => {
    const free = x.interval - x.clear
    if (!(free > 0)) {
      const no = refuse('the interval leaves no time for work')
      return { free: no, lap: x.whole / x.laps, laps: no, width: no }
    }
    const laps = Math.min(x.laps, roundTo(free / (x.whole / x.laps), { step: 1, mode: 'down' }))
    return { free, lap: x.whole / x.laps, laps, width: laps * x.gain }
  },
})
