import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec } from '../calculation.ts'

const people = (symbol: string, least = 0): InputSpec => ({
  symbol,
  kind: 'count',
  range: [least, 200],
})
const clock = (symbol: string): InputSpec => ({
  symbol,
  kind: 'clock',
  range: [0, 2 * secondsPerDay],
})

/**
 * Hours (s) that the rota has everybody there on a race day, what they come to for each person at
 * hand, and how many people it takes: superintendent and drivers once for each crew, gate and people
 * on foot once. A late crew comes when the early one leaves, so that it adds people and no hours.
 * What is left for first light takes a driver, and the superintendent: nobody drives there alone.
 */
export const crewDay = calculation({
  id: 'crew-day',
  sources: ['common-practice'],
  inputs: {
    start: clock('t_0'),
    water: clock('t_3'),
    look: clock('t_4'),
    after: clock('t_7'),
    done: clock('t_8'),
    walkers: people('k'),
    harrows: people('d_h'),
    trucks: people('d_t'),
    left: { symbol: 'T_l', kind: 'duration', range: [0, 2e6] },
    shifts: people('s', 1),
    people: people('p', 1),
  },
  outputs: {
    driving: {
      symbol: 'T_d',
      kind: 'hours',
      tex: '@harrows\\,(@done - @start) + @trucks\\,(@done - @water) + @left',
    },
    foot: {
      symbol: 'T_f',
      kind: 'hours',
      tex: '(@done - @start) + (1 + @walkers)(@after - @look) + @left',
    },
    all: { symbol: 'T', kind: 'hours', tex: '@driving + @foot' },
    each: { symbol: 'T_1', kind: 'hours', tex: '\\frac{@all}{@people}' },
    places: {
      symbol: 'p_1',
      kind: 'whole',
      tex: '@shifts\\,(1 + @harrows + @trucks) + 1 + @walkers',
    },
  },
  compute: (x) => {
    const driving = x.harrows * (x.done - x.start) + x.trucks * (x.done - x.water) + x.left
    const foot = x.done - x.start + (1 + x.walkers) * (x.after - x.look) + x.left
    const all = driving + foot
    return {
      driving,
      foot,
      all,
      each: all / x.people,
      places: x.shifts * (1 + x.harrows + x.trucks) + 1 + x.walkers,
    }
  },
})
