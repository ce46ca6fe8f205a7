import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { evening } from './evening.ts'
import { breaksBefore, postTime } from './post-times.ts'

const time = (symbol: string, most = secondsPerDay): InputSpec => ({
  symbol,
  kind: 'minutes',
  range: [0, most],
})
const five = 300

/** A card that is not over by noon of the day after its date is a slip of the pen. */
const latest = 1.5 * secondsPerDay

/** Plans are made, and durations printed, in whole five minutes. */
const inFives = (time: number): number => wholeUp(time / five) * five

const fives = (what: string): string =>
  `5\\,\\text{min} \\cdot \\left\\lceil \\frac{${what}}{5\\,\\text{min}} \\right\\rceil`

/** Half of it, to the nearest five minutes. */
const halfInFives = (what: string): string =>
  `5\\,\\text{min} \\cdot \\left\\lfloor \\frac{${what}}{10\\,\\text{min}} + \\tfrac12 \\right\\rfloor`

const inputs = {
  first: { symbol: 't_1', kind: 'clock', range: [0, secondsPerDay] },
  races: { symbol: 'r', kind: 'count', range: [1, 40] },
  interval: time('i'),
  breakEvery: { symbol: 'k', kind: 'count', range: [0, 40] },
  pause: time('i_b'),
  warmUp: time('w'),
  check: time('c'),
  rounds: { symbol: 'n', kind: 'count', range: [0, 10] },
  round: time('t_r', 1e6),
  soak: time('t_s'),
  harrow: time('t_h', 1e6),
  walk: time('t_w'),
  pullBack: time('t_p', 1e6),
  // In the far north the last light comes after midnight.
  light: { symbol: 'l', kind: 'clock', range: [0, 2 * secondsPerDay] },
  longest: { symbol: 'T_1', kind: 'hours', range: [3600, secondsPerDay] },
} as const satisfies Readonly<Record<string, InputSpec>>

const outputs = {
  harrowing: { symbol: "t_h'", kind: 'duration', tex: fives('@harrow') },
  watering: { symbol: "t_r'", kind: 'duration', tex: fives('@round') },
  pulling: { symbol: "t_p'", kind: 'duration', tex: fives('@pullBack') },
  start: {
    symbol: 't_0',
    kind: 'clock',
    tex: '@first - @warmUp - @check - @rounds\\,(@watering + @soak) - @harrowing - @walk',
  },
  harrow: { symbol: 't_2', kind: 'clock', tex: '@start + @walk' },
  water: { symbol: 't_3', kind: 'clock', tex: '@start + @walk + @harrowing' },
  look: { symbol: 't_4', kind: 'clock', tex: '@first - @warmUp - @check' },
  horses: { symbol: 't_5', kind: 'clock', tex: '@first - @warmUp' },
  breaks: {
    symbol: 'b',
    kind: 'whole',
    tex: '\\left\\lfloor \\frac{@races - 1}{\\max(1,\\,@breakEvery)} \\right\\rfloor \\cdot \\min(1,\\,@breakEvery)',
  },
  last: {
    symbol: 't_6',
    kind: 'clock',
    tex: '@first + (@races - 1)\\,@interval + @breaks\\,(@pause - @interval)',
  },
  after: { symbol: 't_7', kind: 'clock', tex: '@last + @interval' },
  pulled: {
    symbol: 't_a',
    kind: 'clock',
    tex: '@after + @pulling \\le \\min(@light,\\,24\\,\\text{h})',
  },
  harrowed: {
    symbol: 't_b',
    kind: 'clock',
    tex: '@pulled + @harrowing \\le \\min(@light,\\,24\\,\\text{h})',
  },
  watered: {
    symbol: 't_c',
    kind: 'clock',
    tex: '@harrowed + @watering \\le \\min(@light,\\,24\\,\\text{h})',
  },
  truck: { symbol: 't_d', kind: 'clock', tex: '\\min(@harrowed,\\,@done)' },
  done: { symbol: 't_8', kind: 'clock', tex: '\\max(@after,\\,@pulled,\\,@harrowed,\\,@watered)' },
  left: {
    symbol: 'T_l',
    kind: 'duration',
    tex: '\\max(0,\\,@after + @pulling + @harrowing - @done)',
  },
  long: { symbol: 'T', kind: 'hours', tex: '@done - @start' },
  shifts: {
    symbol: 's',
    kind: 'whole',
    tex: '\\left\\lceil \\frac{@long}{@longest} \\right\\rceil',
  },
  over: { symbol: 't_9', kind: 'clock', tex: `@start + ${halfInFives('@long')}` },
} as const

/** Working hours, and the hour at which an early crew hands over to a late one. */
function shiftsOf(start: number, done: number, longest: number) {
  const shifts = wholeUp((done - start) / longest)
  const half = start + Math.round((done - start) / 2 / five) * five
  return { long: done - start, shifts, over: shifts > 1 ? half : refuse('one-crew') }
}

/**
 * The working day around a card of races: clock times (s after midnight), counted back from the
 * first race and on from the last, past midnight on the next day. After it no work is planned that
 * would end after the light, or after midnight; pulling back and harrowing that are left are done at
 * first light.
 */
export const raceDayClock = calculation({
  id: 'race-day-clock',
  sources: ['common-practice'],
  inputs,
  outputs,
  refusals: ['begins-day-before', 'ends-next-day', 'after-light', 'one-crew'],
  compute: ({ ...x }) => {
    const harrowing = inFives(x.harrow)
    const watering = inFives(x.round)
    const pulling = inFives(x.pullBack)
    const look = x.first - x.warmUp - x.check
    const start = look - x.rounds * (watering + x.soak) - harrowing - x.walk
    const breaks = breaksBefore(x.races, x)
    const last = postTime(x.races, x)
    const after = last + x.interval
    const work = evening(after, Math.min(x.light, secondsPerDay), { harrowing, pulling, watering })
    const early = refuse('begins-day-before')
    const noEnd = refuse('ends-next-day')
    const from = (s: number) => (start < 0 ? early : s)
    const until = (s: number) => (after > latest ? noEnd : s)
    const no = start < 0 ? early : after > latest ? noEnd : undefined
    return {
      harrowing,
      watering,
      pulling,
      start: from(start),
      harrow: from(start + x.walk),
      water: from(start + x.walk + harrowing),
      look: from(look),
      horses: from(look + x.check),
      breaks,
      last: until(last),
      after: until(after),
      ...work,
      truck: until(typeof work.harrowed === 'number' ? work.harrowed : work.done),
      done: until(work.done),
      left: until(Math.max(0, after + pulling + harrowing - work.done)),
      ...(no ? { long: no, shifts: no, over: no } : shiftsOf(start, work.done, x.longest)),
    }
  },
})
