import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

const time = (symbol: string, label: string, most = secondsPerDay): InputSpec => ({
  symbol,
  label,
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
  title: 'The race day by the clock',
  about:
    'What must be done before horses come on is counted back from the first race; what follows is counted on from the last. Harrowing, watering and pulling back are counted in whole five minutes, and each round of water is followed by the wait until the shine is gone. Work that has to begin in the dark is better done the evening before.',
  sources: ['common-practice'],
  inputs: {
    first: { symbol: 't_1', label: 'first race', kind: 'clock', range: [0, secondsPerDay] },
    races: { symbol: 'r', label: 'races on the card', kind: 'count', range: [1, 40] },
    interval: time('i', 'time from race to race'),
    warmUp: time('w', 'time for which horses warm up before the first race'),
    check: time('c', 'last look before horses come on'),
    rounds: {
      symbol: 'n',
      label: 'rounds of water before the first race',
      kind: 'count',
      range: [0, 10],
    },
    round: time('t_r', 'one round of water', 1e6),
    soak: time('t_s', 'wait until the shine is gone'),
    harrow: time('t_h', 'harrowing the whole width', 1e6),
    walk: time('t_w', 'walk around the track in the morning'),
    pullBack: time('t_p', 'pulling back the strip next to the rail', 1e6),
  },
  outputs: {
    harrowing: {
      symbol: "t_h'",
      label: 'harrowing, in whole five minutes',
      kind: 'duration',
      tex: '5\\,\\text{min} \\cdot \\left\\lceil \\frac{@harrow}{5\\,\\text{min}} \\right\\rceil',
    },
    watering: {
      symbol: "t_r'",
      label: 'a round of water, in whole five minutes',
      kind: 'duration',
      tex: '5\\,\\text{min} \\cdot \\left\\lceil \\frac{@round}{5\\,\\text{min}} \\right\\rceil',
    },
    pulling: {
      symbol: "t_p'",
      label: 'pulling back, in whole five minutes',
      kind: 'duration',
      tex: '5\\,\\text{min} \\cdot \\left\\lceil \\frac{@pullBack}{5\\,\\text{min}} \\right\\rceil',
    },
    start: {
      symbol: 't_0',
      label: 'the crew begins',
      kind: 'clock',
      tex: '@first - @warmUp - @check - @rounds\\,(@watering + @soak) - @harrowing - @walk',
    },
    harrow: { symbol: 't_2', label: 'the harrow starts', kind: 'clock', tex: '@start + @walk' },
    water: {
      symbol: 't_3',
      label: 'the first round of water starts',
      kind: 'clock',
      tex: "t_2 + t_h'",
    },
    look: {
      symbol: 't_4',
      label: 'the last look begins',
      kind: 'clock',
      tex: '@first - @warmUp - @check',
    },
    horses: { symbol: 't_5', label: 'horses come on', kind: 'clock', tex: '@first - @warmUp' },
    last: {
      symbol: 't_6',
      label: 'last race',
      kind: 'clock',
      tex: '@first + (@races - 1)\\,@interval',
    },
    after: {
      symbol: 't_7',
      label: 'the track is clear again',
      kind: 'clock',
      tex: '@last + @interval',
    },
    done: {
      symbol: 't_8',
      label: 'the crew is done',
      kind: 'clock',
      tex: '@after + @harrowing + @pulling + @watering',
    },
    long: {
      symbol: 'T',
      label: 'from the first hand to the last',
      kind: 'hours',
      tex: '@done - @start',
    },
  },
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
    const early = refuse(
      'the work before the first race does not fit into one day; do part of it the day before',
    )
    const late = refuse('the day ends after midnight')
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
