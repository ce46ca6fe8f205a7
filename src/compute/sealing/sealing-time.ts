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
 * How long sealing takes, and how long before rain it must begin, flattening alone included. Rollers
 * that have a driver beside the screen's follow it one lap behind; where it is quicker, one thing
 * follows the other, and then more rollers have a driver. A roller without one stands.
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
      symbol: 'n_b',
      kind: 'count',
      tex: `\\max(0,\\,\\min(@rollers,\\,@people - ${1 + onFoot}))`,
    },
    rolling: {
      symbol: "t_r'",
      kind: 'duration',
      tex: `${eachLaps('\\min(@rollers,\\,@people)')} \\cdot ${eachLaps('@rollers')}^{-1}\\,@roll`,
    },
    behind: {
      symbol: 't_b',
      kind: 'duration',
      tex: `${eachLaps('@at-once')} \\cdot ${eachLaps('@rollers')}^{-1}\\,@roll`,
    },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '@flatten + \\min\\left(@rolling,\\; @behind - \\min(1,\\,@at-once) \\cdot \\max\\left(0,\\,\\min(@flatten,\\,@behind) - \\frac{@flatten}{@laps}\\right)\\right)',
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
    const atOnce = Math.max(0, Math.min(rollers, people - 1 - onFoot))
    const each = (drivers: number): number => wholeUp(rollLaps / Math.max(1, drivers))
    const rollingBy = (drivers: number): number => (roll * each(drivers)) / each(rollers)
    const rolling = rollingBy(Math.min(rollers, people))
    const behind = rollingBy(atOnce)
    const saved = Math.max(0, Math.min(flatten, behind) - flatten / laps)
    const time = flatten + Math.min(rolling, behind - Math.min(1, atOnce) * saved)
    return {
      need: wanted,
      'at-once': atOnce,
      rolling,
      behind,
      time,
      'start-before': time + margin,
      'flat-before': flatten + margin,
    }
  },
})
