import { calculation, type InputSpec } from '../calculation.ts'

const work = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'duration',
  range: [0, 864_000],
  howTo: 'Time it once with the machines here.',
})

/** How long sealing takes, and how long before rain it must begin. */
export const sealingTime = calculation({
  id: 'sealing-time',
  title: 'Time to seal the track',
  about:
    'The cushion is flattened first and rolled after, so the times add. Where one crew flattens ahead of the trucks that roll, it goes faster; the manual counts on the slower way. The margin gets trucks off and gates shut.',
  inputs: {
    flatten: work('t_f', 'time to flatten the cushion'),
    roll: work('t_r', 'time to roll it'),
    margin: {
      ...work('t_m', 'time kept in hand before the rain'),
      kind: 'minutes',
      range: [0, 7200],
      howTo: 'A rule of the trade; change it when your own records say so.',
    },
  },
  outputs: {
    time: {
      symbol: 't',
      label: 'time to flatten and roll',
      kind: 'duration',
      tex: '@flatten + @roll',
    },
    'start-before': {
      symbol: 't_0',
      label: 'latest start before the first rain',
      kind: 'duration',
      tex: '@flatten + @roll + @margin',
    },
  },
  sources: ['common-practice'],
  compute: ({ flatten, roll, margin }) => ({
    time: flatten + roll,
    'start-before': flatten + roll + margin,
  }),
})
