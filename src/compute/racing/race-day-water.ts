import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, type Steps } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { type RaceDayHour, type RaceDayWaterInput, raceDayHours } from './race-day-hours.ts'

const clock = (symbol: string): InputSpec => ({
  symbol,
  kind: 'clock',
  range: [0, 2 * secondsPerDay],
})
const minutes = (symbol: string, least = 0): InputSpec => ({
  symbol,
  kind: 'minutes',
  range: [least, secondsPerDay],
})

const inputs = {
  rate: { symbol: 'ET_o', kind: 'dailyWater', range: [0, 3e-7] },
  area: { symbol: 'A', kind: 'area', range: [500, 200_000] },
  load: { symbol: 'V_1', kind: 'waterVolume', range: [0.01, 60] },
  usable: { symbol: 'u', kind: 'share', range: [0.3, 1] },
  cycle: minutes('t_1', 30),
  spread: minutes('t_s', 5),
  trucks: { symbol: 'm', kind: 'count', range: [1, 20] },
  rise: clock('a'),
  set: clock('b'),
  start: clock('t_0'),
  begin: clock('t_3'),
  look: clock('t_4'),
  harrowed: clock('t_b'),
  done: clock('t_8'),
  first: clock('t_f'),
  interval: minutes('i', 60),
  breakEvery: { symbol: 'k_b', kind: 'count', range: [0, 40] },
  breaks: { symbol: 'b_n', kind: 'whole', range: [0, 40] },
  pause: minutes('i_b', 60),
  breakLoads: { symbol: 'n_b', kind: 'whole', range: [0, 1000] },
  clear: minutes('c'),
  parade: minutes('o'),
  reserve: minutes('k'),
} as const satisfies Readonly<Record<string, InputSpec>>

/** What says how much the sun draws between first and last work. */
const dayAndSun = ['rate', 'rise', 'set', 'start', 'done']

const outputs = {
  lost: {
    symbol: 'd',
    kind: 'waterDepth',
    tex: '\\textstyle\\sum_h 1.2\\,@rate\\,\\tfrac12\\left(\\cos\\pi\\tfrac{h - a}{b - a} - \\cos\\pi\\tfrac{h + 1 - a}{b - a}\\right)',
    restsOn: dayAndSun,
  },
  water: { symbol: 'V', kind: 'waterVolume', tex: '@lost\\,@area', round: 'up' },
  loads: { symbol: 'n', kind: 'whole', tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil' },
  given: {
    symbol: 'V_g',
    kind: 'waterVolume',
    tex: '\\textstyle\\sum_h \\min(\\text{behind},\\,\\text{truck},\\,\\text{store})',
    round: 'down',
    restsOn: 'all',
  },
  behind: {
    symbol: 'd_b',
    kind: 'waterDepth',
    tex: '\\max_h \\left(\\textstyle\\sum d - \\tfrac{V_g}{A}\\right)',
    restsOn: 'all',
  },
} as const

/** What the least of them limits in an hour. */
const terms = ['behind', 'truck', 'store']

type Inputs = Readonly<Record<keyof typeof inputs, number>>

type Store = NonNullable<RaceDayWaterInput['store']>

function hoursOf(x: Inputs, store: Store | undefined): readonly RaceDayHour[] {
  const before = x.parade + x.reserve
  return raceDayHours({ ...x, before, ...(store === undefined ? {} : { store }) })
}

/** Hour by hour what the air draws, what can be put down, and what is behind. */
const hourSteps = (hours: readonly RaceDayHour[]): Steps => ({
  columns: [
    { symbol: 'h', kind: 'clock' },
    { symbol: 'd_h', kind: 'waterDepth' },
    { symbol: 'n_h' },
    { symbol: 'm_h' },
    { symbol: 'V_h', kind: 'waterVolume' },
    { symbol: 'd_b', kind: 'waterDepth' },
    { symbol: 'S_h', kind: 'waterVolume' },
  ],
  rows: hours.map((h) => [h.from, h.lost, h.needed, h.possible, h.given, h.behind, h.left ?? '']),
})

function amounts(x: Inputs, store: Store | undefined) {
  const hours = hoursOf(x, store)
  const lost = hours.reduce((sum, h) => sum + h.lost, 0)
  return {
    lost,
    water: lost * x.area,
    loads: wholeUp((lost * x.area) / x.load),
    given: hours.reduce((sum, h) => sum + h.given, 0),
    behind: Math.max(0, ...hours.map((h) => h.behind)),
    low: Math.min(...hours.map((h) => h.left ?? Infinity)),
  }
}

/** A race day's water against the time in which it can be put down. */
export const raceDayWater = calculation({
  id: 'race-day-water',
  sources: ['fao-56', 'geometry'],
  terms,
  inputs,
  outputs,
  steps: { hours: (x) => hourSteps(hoursOf(x, undefined)) },
  compute: ({ ...x }) => {
    const { low: _, ...rest } = amounts(x, undefined)
    return rest
  },
})

/** The same where water comes from a store, which may run low. */
export const raceDayWaterFromStore = calculation({
  id: 'race-day-water-from-store',
  sources: ['fao-56', 'geometry'],
  terms,
  inputs: {
    ...inputs,
    full: { symbol: 'S', kind: 'waterVolume', range: [0, 40_000] },
    morning: { symbol: 'S_m', kind: 'waterVolume', range: [0, 40_000] },
    recharge: { symbol: 'q_r', kind: 'waterFlow', range: [0, 0.4] },
  },
  outputs: {
    ...outputs,
    low: { symbol: 'S_0', kind: 'waterVolume', tex: '\\min_h S_h', round: 'down', restsOn: 'all' },
  },
  steps: {
    hours: ({ full, morning, recharge, ...x }) =>
      hourSteps(hoursOf(x, { full, morning, recharge })),
  },
  compute: ({ full, morning, recharge, ...x }) => amounts(x, { full, morning, recharge }),
})
