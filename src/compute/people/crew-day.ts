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
const clock = (symbol: string): InputSpec => ({ symbol, kind: 'clock', range: [0, secondsPerDay] })

/**
 * Hours of work on a race day, what they come to for each person at hand, and how many people the
 * rota takes: superintendent and drivers once for each crew, gate and people on foot once.
 */
export const crewDay = calculation({
  id: 'crew-day',
  sources: ['common-practice'],
  inputs: {
    harrow: time('t_h'),
    round: time('t_r'),
    rounds: people('n'),
    walk: { symbol: 't_w', kind: 'minutes', range: [0, secondsPerDay] },
    walkers: people('k'),
    first: clock('t_1'),
    after: clock('t_7'),
    done: clock('t_8'),
    harrows: people('d_h'),
    trucks: people('d_t'),
    shifts: people('s', 1),
    people: people('p', 1),
  },
  outputs: {
    driving: {
      symbol: 'T_d',
      kind: 'hours',
      tex: '@harrow + @trucks\\,@rounds\\,@round + (@done - @first)',
    },
    foot: { symbol: 'T_f', kind: 'hours', tex: '@walkers\\,(@walk + @after - @first)' },
    each: { symbol: 'T', kind: 'hours', tex: '\\frac{@driving + @foot}{@people}' },
    places: {
      symbol: 'p_1',
      kind: 'whole',
      tex: '@shifts\\,(1 + @harrows + @trucks) + 1 + @walkers',
    },
  },
  compute: (x) => {
    const driving = x.harrow + x.trucks * x.rounds * x.round + (x.done - x.first)
    const foot = x.walkers * (x.walk + x.after - x.first)
    return {
      driving,
      foot,
      each: (driving + foot) / x.people,
      places: x.shifts * (1 + x.harrows + x.trucks) + 1 + x.walkers,
    }
  },
})
