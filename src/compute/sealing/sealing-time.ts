import { calculation, type InputSpec } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

const work = (symbol: string): InputSpec => ({
  symbol,
  kind: 'duration',
  range: [0, 864_000],
})
const people = (symbol: string): InputSpec => ({ symbol, kind: 'count', range: [1, 200] })

/** Laps of whoever has the most of them. */
const eachLaps = (drivers: string): string =>
  `\\left\\lceil \\frac{@rollLaps}{\\max(1,\\,${drivers})} \\right\\rceil`

/** On foot, beside the drivers: opens drains, watches the sky and the prints. */
const onFoot = 1

/**
 * How long sealing takes, and how long before rain it must begin, flattening alone included. With a
 * driver for the screen and for each roller they work behind each other, the rollers one lap of the
 * screen behind; with fewer people one thing follows the other, and a roller without a driver stands.
 */
export const sealingTime = calculation({
  id: 'sealing-time',
  inputs: {
    flatten: work('t_f'),
    roll: work('t_r'),
    laps: { symbol: 'N_f', kind: 'count', range: [1, 1000] },
    rollers: { symbol: 'n', kind: 'count', range: [0, 40] },
    rollLaps: { symbol: 'N_r', kind: 'count', range: [1, 1000] },
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
    rolling: {
      symbol: "t_r'",
      kind: 'duration',
      tex: `${eachLaps('\\min(@rollers,\\,@people)')} \\cdot ${eachLaps('@rollers')}^{-1}\\,@roll`,
    },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '@flatten + @rolling - @at-once \\cdot \\max\\left(0,\\,\\min(@flatten,\\,@rolling) - \\frac{@flatten}{@laps}\\right)',
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
  compute: ({ flatten, roll, laps, rollers, rollLaps, people, margin }) => {
    const wanted = 1 + rollers + onFoot
    const atOnce = people >= wanted ? 1 : 0
    const each = (drivers: number): number => wholeUp(rollLaps / Math.max(1, drivers))
    const rolling = (roll * each(Math.min(rollers, people))) / each(rollers)
    const saved = Math.max(0, Math.min(flatten, rolling) - flatten / laps)
    const time = flatten + rolling - atOnce * saved
    return {
      need: wanted,
      'at-once': atOnce,
      rolling,
      time,
      'start-before': time + margin,
      'flat-before': flatten + margin,
    }
  },
})
