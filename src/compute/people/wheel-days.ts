import { secondsPerDay } from '../../model/day.ts'
import { calculation } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/** On how many days the everyday work gives a new driver the hours that he needs at the wheel. */
export const wheelDays = calculation({
  id: 'wheel-days',
  sources: ['common-practice'],
  inputs: {
    wheel: { symbol: 'T', kind: 'hours', range: [600, 400_000] },
    daily: { symbol: 't', kind: 'duration', range: [60, secondsPerDay] },
  },
  outputs: {
    days: {
      symbol: 'n',
      kind: 'days',
      tex: '\\left\\lceil \\frac{@wheel}{@daily} \\right\\rceil \\cdot 1\\,\\text{d}',
    },
  },
  compute: (x) => ({ days: wholeUp(x.wheel / x.daily) * secondsPerDay }),
})
