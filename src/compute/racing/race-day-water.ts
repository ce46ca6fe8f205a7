import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { raceDayHours } from './race-day-hours.ts'

const clock = (symbol: string, label: string): InputSpec => ({
  symbol,
  label,
  kind: 'clock',
  range: [0, secondsPerDay],
})
const minutes = (symbol: string, label: string, least = 0): InputSpec => ({
  symbol,
  label,
  kind: 'minutes',
  range: [least, secondsPerDay],
})

const inputs = {
  rate: {
    symbol: 'ET_o',
    label: 'drawn by the air in a day',
    kind: 'dailyWater',
    range: [0, 3e-7],
  },
  area: { symbol: 'A', label: 'area of the track', kind: 'area', range: [500, 200_000] },
  load: {
    symbol: 'V_1',
    label: 'on the track from one load',
    kind: 'waterVolume',
    range: [0.01, 60],
  },
  usable: {
    symbol: 'u',
    label: 'share of the tank that reaches the track',
    kind: 'share',
    range: [0.3, 1],
  },
  cycle: minutes('t_1', 'from load to load', 30),
  spread: minutes('t_s', 'to spray a load', 5),
  trucks: { symbol: 'm', label: 'trucks', kind: 'count', range: [1, 20] },
  rise: clock('a', 'sunrise'),
  set: clock('b', 'sunset'),
  start: clock('t_0', 'the crew begins'),
  done: clock('t_8', 'the crew is done'),
  horses: clock('t_5', 'horses come on'),
  first: clock('t_f', 'first race'),
  last: clock('t_6', 'last race'),
  interval: minutes('i', 'time from race to race', 60),
  clear: minutes('c', 'time in which horses leave the track and come on again'),
} as const satisfies Readonly<Record<string, InputSpec>>

const about =
  'In each hour the air draws its share of the day, which follows the sun. It can be put back only when no horse is on the track: before they come on, between races, after the last. What cannot be put back in time adds up, and is how far the surface is behind. The hours stand in the table of the race day.'

const outputs = {
  lost: {
    symbol: 'd',
    label: 'drawn by the air while the crew is there',
    kind: 'waterDepth',
    tex: '\\textstyle\\sum_h 1.2\\,@rate\\,\\tfrac12\\left(\\cos\\pi\\tfrac{h - a}{b - a} - \\cos\\pi\\tfrac{h + 1 - a}{b - a}\\right)',
  },
  water: {
    symbol: 'V',
    label: 'to keep the track moist through the day',
    kind: 'waterVolume',
    tex: '@lost\\,@area',
  },
  loads: {
    symbol: 'n',
    label: 'loads through the day',
    kind: 'whole',
    tex: '\\left\\lceil \\frac{@water}{@load} \\right\\rceil',
  },
  given: {
    symbol: 'V_g',
    label: 'that can be put down in the time there is',
    kind: 'waterVolume',
    tex: '\\textstyle\\sum_h \\min(\\text{behind},\\,\\text{truck},\\,\\text{store})',
  },
  behind: {
    symbol: 'd_b',
    label: 'behind at the worst hour',
    kind: 'waterDepth',
    tex: '\\max_h \\left(\\textstyle\\sum d - \\tfrac{V_g}{A}\\right)',
  },
} as const

type Inputs = Readonly<Record<keyof typeof inputs, number>>

function amounts(x: Inputs, store: { full: number; recharge: number } | undefined) {
  const hours = raceDayHours({ ...x, ...(store === undefined ? {} : { store }) })
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
  title: 'Water through a race day',
  about,
  sources: ['fao-56', 'geometry'],
  inputs,
  outputs,
  compute: ({ ...x }) => {
    const { low: _, ...rest } = amounts(x, undefined)
    return rest
  },
})

/** The same where water comes from a store, which may run low. */
export const raceDayWaterFromStore = calculation({
  id: 'race-day-water-from-store',
  title: raceDayWater.title,
  about,
  sources: ['fao-56', 'geometry'],
  inputs: {
    ...inputs,
    full: {
      symbol: 'S',
      label: 'water stored on the grounds',
      kind: 'waterVolume',
      range: [0, 40_000],
    },
    recharge: {
      symbol: 'q_r',
      label: 'flow that refills the store',
      kind: 'waterFlow',
      range: [0, 0.4],
    },
  },
  outputs: {
    ...outputs,
    low: {
      symbol: 'S_0',
      label: 'left in store at the lowest',
      kind: 'waterVolume',
      tex: '\\min_h S_h',
      round: 'down',
    },
  },
  compute: ({ full, recharge, ...x }) => amounts(x, { full, recharge }),
})
