import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec } from '../calculation.ts'

const time = (symbol: string): InputSpec => ({
  symbol,
  kind: 'duration',
  range: [0, 1e6],
})
const people = (symbol: string, least = 0): InputSpec => ({
  symbol,
  kind: 'count',
  range: [least, 200],
})

/** Hours of work on a race day, and what they come to for each person at hand. */
export const crewDay = calculation({
  id: 'crew-day',
  sources: ['common-practice'],
  inputs: {
    harrow: time('t_h'),
    pullBack: time('t_p'),
    round: time('t_r'),
    rounds: people('n'),
    walk: { symbol: 't_w', kind: 'minutes', range: [0, secondsPerDay] },
    walkers: people('k'),
    first: { symbol: 't_1', kind: 'clock', range: [0, secondsPerDay] },
    after: { symbol: 't_7', kind: 'clock', range: [0, secondsPerDay] },
    people: people('p', 1),
  },
  outputs: {
    driving: {
      symbol: 'T_d',
      kind: 'hours',
      tex: '2\\,@harrow + @pullBack + @rounds\\,@round + (@after - @first)',
    },
    foot: { symbol: 'T_f', kind: 'hours', tex: '@walkers\\,(@walk + @after - @first)' },
    each: { symbol: 'T', kind: 'hours', tex: '\\frac{@driving + @foot}{@people}' },
  },
  compute: (x) => {
    const racing = x.after - x.first
    const driving = 2 * x.harrow + x.pullBack + x.rounds * x.round + racing
    const foot = x.walkers * (x.walk + racing)
    return { driving, foot, each: (driving + foot) / x.people }
  },
})
