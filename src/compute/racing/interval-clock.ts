import { roundTo } from '../../model/quantity/format-quantity.ts'
import { calculation, refuse } from '../calculation.ts'
import { besideRail } from '../water/beside-rail.ts'
import { intervalInputs, workWindow } from './between-races.ts'

const wholeLaps = (room: number, lap: number): number =>
  room > 0 ? roundTo(room / lap, { step: 1, mode: 'down' }) : 0

const inputs = {
  ...intervalInputs,
  lap: { symbol: 't_1', kind: 'minutes', range: [10, 7200] },
  whole: { symbol: 'n_w', kind: 'whole', range: [1, 1000] },
  rail: { symbol: 'L_r', kind: 'distance', range: [100, 4000] },
  speed: { symbol: 'v', kind: 'speed', range: [0, 14] },
  trucks: { symbol: 'm', kind: 'count', range: [0, 20] },
  reach: { symbol: 'D_1', kind: 'reach', range: [0, 1e5] },
  bar: { symbol: 'W', kind: 'width', range: [0, 20] },
} as const

type Inputs = Readonly<Record<keyof typeof inputs, number>>

/** Laps of water: behind the first lap of the harrow, or in its place; no more than the tanks hold. */
function water(x: Inputs, free: number) {
  if (!(x.speed > 0 && x.trucks > 0)) {
    const none = refuse('no-water-truck')
    return {
      'water-lap': none,
      'tank-laps': none,
      'water-laps': none,
      'water-alone': none,
      watered: none,
      both: none,
    }
  }
  const way = besideRail(x.rail, x.bar)
  const lap = way / (x.trucks * x.speed)
  const tank = wholeLaps(x.trucks * x.reach, way)
  const behind = Math.min(tank, wholeLaps(free - x.lap, lap))
  return {
    'water-lap': lap,
    'tank-laps': tank,
    'water-laps': behind,
    'water-alone': Math.min(tank, wholeLaps(free, lap)),
    watered: behind > 0 ? x.clear + x.lap + behind * lap : refuse('no-lap-of-water'),
    both: tank > 0 ? x.interval - free + x.lap + lap : refuse('tank-too-small'),
  }
}

/**
 * Between two races, or in a break, by the minute: times (s) from the finish, what fits into the
 * window between "track clear" and the count of people and rakes, and what is left for later.
 */
export const intervalClock = calculation({
  id: 'interval-clock',
  sources: ['common-practice', 'geometry'],
  inputs,
  outputs: {
    clear: { symbol: 'a', kind: 'minutes', tex: '@clear' },
    free: {
      symbol: 't',
      kind: 'minutes',
      tex: '@interval - @clear - @parade - @reserve',
      round: 'down',
    },
    laps: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\min\\left(@whole,\\,\\left\\lfloor \\frac{@free}{@lap} \\right\\rfloor\\right)',
    },
    harrowed: { symbol: 'b', kind: 'minutes', tex: '@clear + @laps\\,@lap' },
    left: { symbol: 'n_l', kind: 'whole', tex: '@whole - @laps' },
    'water-lap': {
      symbol: 't_w',
      kind: 'minutes',
      tex: '\\frac{@rail + \\pi\\,@bar}{@trucks\\,@speed}',
    },
    'tank-laps': {
      symbol: 'k_t',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{@trucks\\,@reach}{@rail + \\pi\\,@bar} \\right\\rfloor',
    },
    'water-laps': {
      symbol: 'k',
      kind: 'whole',
      tex: '\\min\\left(@tank-laps,\\,\\left\\lfloor \\frac{\\max(0,\\,@free - @lap)}{@water-lap} \\right\\rfloor\\right)',
    },
    'water-alone': {
      symbol: 'k_a',
      kind: 'whole',
      tex: '\\min\\left(@tank-laps,\\,\\left\\lfloor \\frac{@free}{@water-lap} \\right\\rfloor\\right)',
    },
    watered: { symbol: 'w', kind: 'minutes', tex: '@clear + @lap + @water-laps\\,@water-lap' },
    both: {
      symbol: 'i_2',
      kind: 'minutes',
      tex: '@clear + @lap + @water-lap + @reserve + @parade',
    },
    off: { symbol: 'f', kind: 'minutes', tex: '@interval - @parade - @reserve', round: 'down' },
    open: { symbol: 'd', kind: 'minutes', tex: '@interval - @parade', round: 'down' },
  },
  refusals: ['no-water-truck', 'no-lap-of-water', 'tank-too-small', 'interval-too-short'],
  compute: ({ ...x }) => {
    const free = workWindow(x)
    const short = refuse('interval-too-short')
    const laps = Math.min(x.whole, wholeLaps(free, x.lap))
    return {
      clear: x.clear,
      free: free > 0 ? free : short,
      laps,
      harrowed: x.clear + laps * x.lap,
      left: x.whole - laps,
      ...water(x, free),
      off: free > 0 ? x.interval - x.parade - x.reserve : short,
      open: free > 0 ? x.interval - x.parade : short,
    }
  },
})
