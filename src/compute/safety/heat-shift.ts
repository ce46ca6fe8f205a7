import { calculation } from '../calculation.ts'

/** Shares of a shift in the heat on the first days: NIOSH criteria for hot work, new to heat and with earlier experience. */
const fresh = [0.2, 0.4, 0.6, 0.8] as const
const returning = [0.5, 0.6, 0.8] as const

/** How long people may work in the heat on their first days. */
export const heatShift = calculation({
  id: 'heat-shift',
  title: 'First days in the heat',
  about: 'Most people who die of heat at work do so in their first days. The body needs about a week to get used to it: a fifth of the shift on the first day, a fifth more each day. Who has worked in heat before, and was away, starts with half.',
  sources: ['niosh-2016-106'],
  inputs: { shift: { symbol: 't', label: 'a full shift', kind: 'hours', range: [3600, 57_600] } },
  outputs: {
    first: { symbol: 't_1', label: 'on the first day', kind: 'duration', tex: '0.2\\,@shift', round: 'down' },
    second: { symbol: 't_2', label: 'on the second day', kind: 'duration', tex: '0.4\\,@shift', round: 'down' },
    third: { symbol: 't_3', label: 'on the third day', kind: 'duration', tex: '0.6\\,@shift', round: 'down' },
    fourth: { symbol: 't_4', label: 'on the fourth day', kind: 'duration', tex: '0.8\\,@shift', round: 'down' },
    returning: { symbol: 't_r', label: 'on the first day, for somebody used to heat', kind: 'duration', tex: '0.5\\,@shift', round: 'down' },
    'returning-second': { symbol: 't_{r2}', label: 'on the second day, for somebody used to heat', kind: 'duration', tex: '0.6\\,@shift', round: 'down' },
    'returning-third': { symbol: 't_{r3}', label: 'on the third day, for somebody used to heat', kind: 'duration', tex: '0.8\\,@shift', round: 'down' },
  },
  compute: ({ shift }) => ({
    first: fresh[0] * shift, second: fresh[1] * shift, third: fresh[2] * shift, fourth: fresh[3] * shift,
    returning: returning[0] * shift, 'returning-second': returning[1] * shift, 'returning-third': returning[2] * shift,
  }),
})
