import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec } from '../calculation.ts'

const time = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'duration',
  range: [0, 1e6],
})
const people = (symbol: string, label: string, least = 0): InputSpec => ({
  symbol,
  label,
  kind: 'count',
  range: [least, 200],
})

/** Hours of work on a race day, and what they come to for each person at hand. */
export const crewDay = calculation({
  id: 'crew-day',
  title: 'Hours of work on a race day',
  about:
    'One driver for each machine while it works, and people on foot from the first race to the last. Waiting counts as work: nobody can leave. Repairs and rain come on top.',
  sources: ['common-practice'],
  inputs: {
    harrow: time('t_h', 'harrowing the whole width'),
    pullBack: time('t_p', 'pulling back the strip next to the rail'),
    round: time('t_r', 'one round of water'),
    rounds: people('n', 'rounds on a race day'),
    walk: {
      symbol: 't_w',
      label: 'walk around the track in the morning',
      kind: 'minutes',
      range: [0, secondsPerDay],
    },
    walkers: people('k', 'people on foot between races'),
    first: { symbol: 't_1', label: 'first race', kind: 'clock', range: [0, secondsPerDay] },
    after: {
      symbol: 't_7',
      label: 'the track is clear again',
      kind: 'clock',
      range: [0, secondsPerDay],
    },
    people: people('p', 'people on a race day', 1),
  },
  outputs: {
    driving: {
      symbol: 'T_d',
      label: 'of driving',
      kind: 'hours',
      tex: '2\\,@harrow + @pullBack + @rounds\\,@round + (@after - @first)',
    },
    foot: {
      symbol: 'T_f',
      label: 'on foot',
      kind: 'hours',
      tex: '@walkers\\,(@walk + @after - @first)',
    },
    each: {
      symbol: 'T',
      label: 'for each person',
      kind: 'hours',
      tex: '\\frac{@driving + @foot}{@people}',
    },
  },
  compute: (x) => {
    const racing = x.after - x.first
    const driving = 2 * x.harrow + x.pullBack + x.rounds * x.round + racing
    const foot = x.walkers * (x.walk + racing)
    return { driving, foot, each: (driving + foot) / x.people }
  },
})
