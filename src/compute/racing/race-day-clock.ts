import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

const time = (symbol: string, most = secondsPerDay): InputSpec => ({
  symbol,
  kind: 'minutes',
  range: [0, most],
})
const five = 300

/** Plans are made, and durations printed, in whole five minutes. */
const inFives = (time: number): number => wholeUp(time / five) * five

/**
 * The working day around a card of races: clock times (s after midnight), counted back from the
 * first race and on from the last.
 */
export const raceDayClock = calculation({
  id: 'race-day-clock',
  sources: ['common-practice'],
  inputs: {
    first: { symbol: 't_1', kind: 'clock', range: [0, secondsPerDay] },
    races: { symbol: 'r', kind: 'count', range: [1, 40] },
    interval: time('i'),
    warmUp: time('w'),
    check: time('c'),
    rounds: { symbol: 'n', kind: 'count', range: [0, 10] },
    round: time('t_r', 1e6),
    soak: time('t_s'),
    harrow: time('t_h', 1e6),
    walk: time('t_w'),
    pullBack: time('t_p', 1e6),
  },
  outputs: {
    harrowing: {
      symbol: "t_h'",
      kind: 'duration',
      tex: '5\\,\\text{min} \\cdot \\left\\lceil \\frac{@harrow}{5\\,\\text{min}} \\right\\rceil',
    },
    watering: {
      symbol: "t_r'",
      kind: 'duration',
      tex: '5\\,\\text{min} \\cdot \\left\\lceil \\frac{@round}{5\\,\\text{min}} \\right\\rceil',
    },
    pulling: {
      symbol: "t_p'",
      kind: 'duration',
      tex: '5\\,\\text{min} \\cdot \\left\\lceil \\frac{@pullBack}{5\\,\\text{min}} \\right\\rceil',
    },
    start: {
      symbol: 't_0',
      kind: 'clock',
      tex: '@first - @warmUp - @check - @rounds\\,(@watering + @soak) - @harrowing - @walk',
    },
    harrow: { symbol: 't_2', kind: 'clock', tex: '@start + @walk' },
    water: { symbol: 't_3', kind: 'clock', tex: "t_2 + t_h'" },
    look: { symbol: 't_4', kind: 'clock', tex: '@first - @warmUp - @check' },
    horses: { symbol: 't_5', kind: 'clock', tex: '@first - @warmUp' },
    last: { symbol: 't_6', kind: 'clock', tex: '@first + (@races - 1)\\,@interval' },
    after: { symbol: 't_7', kind: 'clock', tex: '@last + @interval' },
    done: { symbol: 't_8', kind: 'clock', tex: '@after + @harrowing + @pulling + @watering' },
    long: { symbol: 'T', kind: 'hours', tex: '@done - @start' },
  },
  refusals: ['begins-day-before', 'ends-after-midnight'],
  compute: (x) => {
    const [harrowing, watering, pulling] = [x.harrow, x.round, x.pullBack].map(inFives) as [
      number,
      number,
      number,
    ]
    const look = x.first - x.warmUp - x.check
    const start = look - x.rounds * (watering + x.soak) - harrowing - x.walk
    const last = x.first + (x.races - 1) * x.interval
    const done = last + x.interval + harrowing + pulling + watering
    const early = refuse('begins-day-before')
    const late = refuse('ends-after-midnight')
    const from = (s: number) => (start < 0 ? early : s)
    const until = (s: number) => (s >= secondsPerDay ? late : s)
    return {
      harrowing,
      watering,
      pulling,
      start: from(start),
      harrow: from(start + x.walk),
      water: from(start + x.walk + harrowing),
      look: from(look),
      horses: from(look + x.check),
      last: until(last),
      after: until(last + x.interval),
      done: until(done),
      long: start < 0 ? early : done - start,
    }
  },
})
