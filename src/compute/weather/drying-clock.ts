import { calculation, type InputSpec } from '../calculation.ts'

const hours = (symbol: string): InputSpec => ({
  symbol,
  kind: 'daylightHours',
  range: [0, 8_640_000],
})
const clock = (symbol: string): InputSpec => ({ symbol, kind: 'clock', range: [0, 172_800] })

const day = (time: string): string =>
  `1 + \\left\\lfloor \\frac{${time}}{@daylight} \\right\\rfloor`
const at = (time: string, day: string): string =>
  `@rise + \\frac{@set - @rise}{\\pi}\\arccos\\left(1 - 2\\left(\\frac{${time}}{@daylight} - @${day} + 1\\right)\\right)`

/**
 * When so many hours of drying daylight are over, where the rain ended in the evening: days counted
 * from the next morning, and the time of that day. Drying follows the sun as a half sine from
 * sunrise to sunset, so that a quarter of a day's drying is over after a third of its daylight.
 */
export const dryingClock = calculation({
  id: 'drying-clock',
  sources: ['geometry', 'common-practice'],
  inputs: {
    early: hours('t_q'),
    late: hours('t_s'),
    daylight: { symbol: 'N', kind: 'hours', range: [3600, 86_400] },
    rise: clock('t_2'),
    set: clock('t_3'),
  },
  outputs: {
    'early-day': { symbol: 'n_q', kind: 'count', tex: day('@early') },
    'early-time': {
      symbol: 'c_q',
      kind: 'quarterClock',
      tex: at('@early', 'early-day'),
      round: 'down',
    },
    'late-day': { symbol: 'n_s', kind: 'count', tex: day('@late') },
    'late-time': { symbol: 'c_s', kind: 'quarterClock', tex: at('@late', 'late-day'), round: 'up' },
  },
  compute: (x) => {
    const place = (hours: number): { day: number; time: number } => {
      const days = hours / x.daylight
      const share = days - Math.floor(days)
      const time = x.rise + ((x.set - x.rise) / Math.PI) * Math.acos(1 - 2 * share)
      return { day: 1 + Math.floor(days), time }
    }
    const [early, late] = [place(x.early), place(x.late)]
    return {
      'early-day': early.day,
      'early-time': early.time,
      'late-day': late.day,
      'late-time': late.time,
    }
  },
})
