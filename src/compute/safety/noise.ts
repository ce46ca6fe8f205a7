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
  sources: ['niosh-98-126', 'cfr-1910-95'],
  inputs: {
    level: { symbol: 'L', kind: 'soundLevel', range: [70, 130], formulaUnit: '' },
    shift: { symbol: 't', kind: 'hours', range: [3600, 57_600] },
  },
  outputs: {
    recommended: {
      symbol: 'T_r',
      kind: 'duration',
      tex: '\\frac{8\\,\\text{h}}{2^{\\left((@level - 85)/3\\right)}}',
      round: 'down',
    },
    rule: {
      symbol: 'T',
      kind: 'duration',
      tex: '\\frac{8\\,\\text{h}}{2^{\\left((@level - 90)/5\\right)}}',
      round: 'down',
    },
    'recommended-dose': {
      symbol: 'D_r',
      kind: 'share',
      tex: '\\frac{@shift}{@recommended}',
      round: 'up',
    },
    dose: { symbol: 'D', kind: 'share', tex: '\\frac{@shift}{@rule}', round: 'up' },
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
