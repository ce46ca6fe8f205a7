import { secondsPerDay } from '../../model/day.ts'
import { calculation, refuse } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/**
 * How many days a grader is needed where the cushion is taken off before it is shaped, and how many
 * of them are not booked.
 */
export const graderBooking = calculation({
  id: 'grader-booking',
  sources: ['common-practice'],
  inputs: {
    takeOff: { symbol: 't_1', kind: 'duration', range: [0, 1e7] },
    shaping: { symbol: 't_2', kind: 'duration', range: [0, 1e6] },
    longest: { symbol: 'T', kind: 'hours', range: [3600, secondsPerDay] },
    booked: { symbol: 'n_b', kind: 'count', range: [0, 366] },
  },
  outputs: {
    work: { symbol: 't', kind: 'duration', tex: '@takeOff + @shaping' },
    days: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@work}{@longest} \\right\\rceil',
    },
    lead: { symbol: 'd', kind: 'days', tex: '(@days - 1) \\cdot 1\\,\\text{d}' },
    more: { symbol: "n'", kind: 'whole', tex: '@days - @booked' },
  },
  refusals: ['not-booked', 'booked-enough'],
  compute: ({ takeOff, shaping, longest, booked }) => {
    const work = takeOff + shaping
    const days = wholeUp(work / longest)
    const more = () => (days > booked ? days - booked : refuse('booked-enough'))
    return {
      work,
      days,
      lead: (days - 1) * secondsPerDay,
      more: booked > 0 ? more() : refuse('not-booked'),
    }
  },
})
