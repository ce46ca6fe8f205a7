import { calculation, type InputSpec } from '../calculation.ts'

const work = (symbol: string): InputSpec => ({
  symbol,
  kind: 'duration',
  range: [0, 864_000],
})
const people = (symbol: string): InputSpec => ({ symbol, kind: 'count', range: [1, 200] })

/** On foot, beside the drivers: opens drains, watches the sky and the prints. */
const onFoot = 1

/**
 * How long sealing takes, and how long before rain it must begin, flattening alone included. With a driver for the screen and
 * for each roller they work behind each other, the rollers one lap of the screen behind; with fewer
 * people one thing follows the other.
 */
export const sealingTime = calculation({
  id: 'sealing-time',
  inputs: {
    flatten: work('t_f'),
    roll: work('t_r'),
    laps: { symbol: 'N_f', kind: 'count', range: [1, 1000] },
    rollers: { symbol: 'n', kind: 'count', range: [0, 40] },
    people: people('P'),
    margin: {
      ...work('t_m'),
      kind: 'minutes',
      range: [0, 7200],
    },
  },
  outputs: {
    need: { symbol: 'P_1', kind: 'count', tex: `1 + @rollers + ${onFoot}` },
    'at-once': {
      symbol: 'b',
      kind: 'count',
      tex: '\\min\\left(1,\\,\\left\\lfloor \\frac{@people}{@need} \\right\\rfloor\\right)',
    },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '@flatten + @roll - @at-once \\cdot \\max\\left(0,\\,\\min(@flatten,\\,@roll) - \\frac{@flatten}{@laps}\\right)',
    },
    'start-before': {
      symbol: 't_0',
      kind: 'duration',
      tex: '@time + @margin',
    },
    'flat-before': {
      symbol: 't_1',
      kind: 'duration',
      tex: '@flatten + @margin',
    },
  },
  sources: ['common-practice'],
  compute: ({ flatten, roll, laps, rollers, people, margin }) => {
    const wanted = 1 + rollers + onFoot
    const atOnce = people >= wanted ? 1 : 0
    const time = flatten + roll - atOnce * Math.max(0, Math.min(flatten, roll) - flatten / laps)
    return {
      need: wanted,
      'at-once': atOnce,
      time,
      'start-before': time + margin,
      'flat-before': flatten + margin,
    }
  },
})
