import { roundTo } from '../../model/quantity/format-quantity.ts'
import { calculation, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/** The times of an interval that belong to horses, or are kept in hand; s. */
export const intervalInputs = {
  interval: { symbol: 't_i', kind: 'minutes', range: [60, 14_400] },
  clear: { symbol: 't_c', kind: 'minutes', range: [0, 7200] },
  parade: { symbol: 't_o', kind: 'minutes', range: [0, 7200] },
  reserve: { symbol: 't_k', kind: 'minutes', range: [0, 3600] },
} as const

/** Time, s, that is left for work between two races; below zero where horses need more. */
export const workWindow = (x: Readonly<Record<keyof typeof intervalInputs, number>>): number =>
  x.interval - x.clear - x.parade - x.reserve

/**
 * What can be harrowed between two races: free time (s), whole laps, the width (m) that they cover
 * from the rail, the interval (s) in which one lap fits, and how many harrows would drive one lap in
 * the free time, each a part of it.
 */
export const betweenRaces = calculation({
  id: 'between-races',
  sources: ['common-practice', 'geometry'],
  inputs: {
    ...intervalInputs,
    whole: { symbol: 't_w', kind: 'duration', range: [60, 1e6] },
    all: { symbol: 'n_w', kind: 'whole', range: [1, 1000] },
    gain: { symbol: 'b', kind: 'width', range: [0.1, 20] },
    harrows: { symbol: 'm', kind: 'count', range: [1, 20] },
  },
  outputs: {
    free: {
      symbol: 't',
      kind: 'minutes',
      tex: '@interval - @clear - @parade - @reserve',
      round: 'down',
    },
    lap: { symbol: 't_1', kind: 'minutes', tex: '\\frac{@whole}{@all}' },
    laps: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\min\\left(@all,\\,\\left\\lfloor \\frac{@free}{@lap} \\right\\rfloor\\right)',
    },
    width: { symbol: 'w', kind: 'width', tex: '@laps\\,@gain', round: 'down' },
    needed: { symbol: 't_n', kind: 'minutes', tex: '@clear + @parade + @reserve + @lap' },
    need: {
      symbol: 'm_1',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@harrows\\,@lap}{@free} \\right\\rceil',
    },
  },
  refusals: ['interval-too-short'],
  compute: (x) => {
    const free = workWindow(x)
    const lap = x.whole / x.all
    const needed = x.interval - free + lap
    if (!(free > 0)) {
      const no = refuse('interval-too-short')
      return { free: no, lap, laps: no, width: no, needed, need: no }
    }
    const laps = Math.min(x.all, roundTo(free / lap, { step: 1, mode: 'down' }))
    const need = wholeUp((x.harrows * lap) / free)
    return { free, lap, laps, width: laps * x.gain, needed, need }
  },
})
