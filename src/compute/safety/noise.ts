import { calculation } from '../calculation.ts'

const eight = 8 * 3600

/**
 * Longest exposure, s, under the US rule to a level, dBA: 8 h at 90 dBA, half for each 5 dB more
 * (29 CFR 1910.95, table G-16a).
 */
export const permittedByRule = (level: number): number => eight / 2 ** ((level - 90) / 5)

/**
 * Longest exposure, s, that NIOSH recommends at a level, dBA: 8 h at 85 dBA, half for each 3 dB
 * more (publication 98-126).
 */
export const recommended = (level: number): number => eight / 2 ** ((level - 85) / 3)

/**
 * Noise dose of a day: the times spent, each as a share of the longest that its level allows.
 * @param parts Level, dBA, and time, s, of each part of the day.
 * @param longest Longest exposure, s, to a level, dBA.
 * @returns A share; above one the day is too loud.
 */
export const noiseDose = (
  parts: readonly { readonly level: number; readonly time: number }[],
  longest: (level: number) => number,
): number => parts.reduce((sum, p) => sum + p.time / longest(p.level), 0)

/**
 * How long (s) a driver may sit in a machine's noise without ear protection, and the dose of a
 * whole shift.
 */
export const noise = calculation({
  id: 'noise',
  title: 'How long without ear protection',
  about:
    "A tractor without a cab is about as loud as a shout at arm's length. The rule and the recommendation differ: the shorter one keeps people from going deaf slowly. Ear protection for the whole shift is cheaper than counting minutes. Three decibels more are twice the sound, so a cab, a closed hood or a sound muffler is worth much.",
  sources: ['niosh-98-126', 'cfr-1910-95'],
  inputs: {
    level: {
      symbol: 'L',
      label: "noise at the driver's ear",
      kind: 'soundLevel',
      range: [70, 130],
      formulaUnit: '',
      howTo:
        'Borrow a sound level meter set to A and slow; hold it at the ear while the machine works.',
    },
    shift: {
      symbol: 't',
      label: 'a full shift',
      kind: 'hours',
      range: [3600, 57_600],
      howTo: 'From the first hand to the last.',
    },
  },
  outputs: {
    recommended: {
      symbol: 'T_r',
      label: 'that NIOSH recommends at most',
      kind: 'duration',
      tex: '\\frac{8\\,\\text{h}}{2^{\\left((@level - 85)/3\\right)}}',
      round: 'down',
    },
    rule: {
      symbol: 'T',
      label: 'that the US rule allows',
      kind: 'duration',
      tex: '\\frac{8\\,\\text{h}}{2^{\\left((@level - 90)/5\\right)}}',
      round: 'down',
    },
    'recommended-dose': {
      symbol: 'D_r',
      label: "of the day's dose that NIOSH recommends, in a full shift",
      kind: 'share',
      tex: '\\frac{@shift}{@recommended}',
      round: 'up',
    },
    dose: {
      symbol: 'D',
      label: "of the day's dose by the rule, in a full shift",
      kind: 'share',
      tex: '\\frac{@shift}{@rule}',
      round: 'up',
    },
  },
  compute: ({ level, shift }) => {
    const day = [{ level, time: shift }]
    return {
      recommended: recommended(level),
      rule: permittedByRule(level),
      'recommended-dose': noiseDose(day, recommended),
      dose: noiseDose(day, permittedByRule),
    }
  },
})
