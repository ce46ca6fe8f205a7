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
  title: 'Drinking water in the heat',
  about:
    'One cup of eight ounces (about a quarter of a liter) at every interval, cool, before anybody is thirsty. It must stand where people work; nobody walks to the barn for it. More than a cup every ten minutes does harm of its own.',
  sources: ['niosh-2016-106', 'niosh-2017-126', 'osha-heat'],
  inputs: {
    every: {
      symbol: 'i',
      label: 'time between two drinks in the heat',
      kind: 'minutes',
      range: [600, 3600],
      howTo: 'A rule: a cup every fifteen to twenty minutes.',
    },
    hours: {
      symbol: 't',
      label: 'a full shift',
      kind: 'hours',
      range: [3600, 57_600],
      howTo: 'From the first hand to the last.',
    },
    people: {
      symbol: 'p',
      label: 'people on a race day',
      kind: 'count',
      range: [1, 200],
      howTo: 'Count them.',
    },
  },
  outputs: {
    cups: {
      symbol: 'n',
      label: 'cups for each person',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@hours}{@every} \\right\\rceil',
    },
    crew: {
      symbol: 'V',
      label: 'of drinking water for the crew',
      kind: 'smallWater',
      tex: '@people\\,@cups \\cdot 8\\,\\text{fl oz}',
    },
  },
  compute: (x) => {
    const cups = wholeUp(x.hours / x.every)
    return { cups, crew: x.people * cups * cup }
  },
})
