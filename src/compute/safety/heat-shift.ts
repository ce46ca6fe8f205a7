import { calculation } from '../calculation.ts'

/**
 * Shares of a shift in the heat, day by day: NIOSH criteria for hot work, new to heat and with
 * earlier experience.
 */
const fresh = { first: 0.2, second: 0.4, third: 0.6, fourth: 0.8, fifth: 1 } as const
const returning = { first: 0.5, second: 0.6, third: 0.8, fourth: 1 } as const

/** How long people may work in the heat on their first days, s. */
export const heatShift = calculation({
  id: 'heat-shift',
  sources: ['niosh-2016-106'],
  inputs: {
    shift: { symbol: 't', kind: 'hours', range: [3600, 57_600] },
  },
  outputs: {
    first: { symbol: 't_1', kind: 'duration', tex: '0.2\\,@shift', round: 'down' },
    second: { symbol: 't_2', kind: 'duration', tex: '0.4\\,@shift', round: 'down' },
    third: { symbol: 't_3', kind: 'duration', tex: '0.6\\,@shift', round: 'down' },
    fourth: { symbol: 't_4', kind: 'duration', tex: '0.8\\,@shift', round: 'down' },
    fifth: { symbol: 't_5', kind: 'duration', tex: '@shift', round: 'down' },
    returning: { symbol: 't_{r1}', kind: 'duration', tex: '0.5\\,@shift', round: 'down' },
    'returning-second': { symbol: 't_{r2}', kind: 'duration', tex: '0.6\\,@shift', round: 'down' },
    'returning-third': { symbol: 't_{r3}', kind: 'duration', tex: '0.8\\,@shift', round: 'down' },
    'returning-fourth': { symbol: 't_{r4}', kind: 'duration', tex: '@shift', round: 'down' },
  },
  compute: ({ shift }) => ({
    first: fresh.first * shift,
    second: fresh.second * shift,
    third: fresh.third * shift,
    fourth: fresh.fourth * shift,
    fifth: fresh.fifth * shift,
    returning: returning.first * shift,
    'returning-second': returning.second * shift,
    'returning-third': returning.third * shift,
    'returning-fourth': returning.fourth * shift,
  }),
})
