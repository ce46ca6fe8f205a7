import { calculation, type InputSpec } from '../calculation.ts'

const work = (symbol: string): InputSpec => ({
  symbol,
  kind: 'duration',
  range: [0, 864_000],
})

/** How long sealing takes, and how long before rain it must begin. */
export const sealingTime = calculation({
  id: 'sealing-time',
  inputs: {
    flatten: work('t_f'),
    roll: work('t_r'),
    margin: {
      ...work('t_m'),
      kind: 'minutes',
      range: [0, 7200],
    },
  },
  outputs: {
    time: { symbol: 't', kind: 'duration', tex: '@flatten + @roll' },
    'start-before': { symbol: 't_0', kind: 'duration', tex: '@flatten + @roll + @margin' },
  },
  sources: ['common-practice'],
  compute: ({ flatten, roll, margin }) => ({
    time: flatten + roll,
    'start-before': flatten + roll + margin,
  }),
})
