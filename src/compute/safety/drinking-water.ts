import { calculation } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'

/** A cup of eight US fluid ounces, m³ (NIST Special Publication 811: 29.573 529 56 mL an ounce). */
const cup = 8 * 29.5735295625e-6

/**
 * Drinking water for a crew in the heat, in whole cups. The shortest interval is ten minutes:
 * beyond a quart and a half in an hour, water itself makes people ill (NIOSH publication 2017-126).
 */
export const drinkingWater = calculation({
  id: 'drinking-water',
  sources: ['niosh-2016-106', 'niosh-2017-126', 'osha-heat'],
  inputs: {
    every: { symbol: 'i', kind: 'minutes', range: [600, 3600] },
    hours: { symbol: 't', kind: 'hours', range: [3600, 57_600] },
    people: { symbol: 'p', kind: 'count', range: [1, 200] },
  },
  outputs: {
    cups: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@hours}{@every} \\right\\rceil',
    },
    crew: { symbol: 'V', kind: 'smallWater', tex: '@people\\,@cups \\cdot 8\\,\\text{fl oz}' },
  },
  compute: (x) => {
    const cups = wholeUp(x.hours / x.every)
    return { cups, crew: x.people * cups * cup }
  },
})
