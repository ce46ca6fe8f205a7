import { calculation } from '../calculation.ts'

const eight = 8 * 3600

/** Longest exposure, s, under the US rule: 8 h at 90 dBA, half for each 5 dB more (29 CFR 1910.95). */
export const permittedByRule = (level: number): number => eight / 2 ** ((level - 90) / 5)

/** Longest exposure, s, that NIOSH recommends: 8 h at 85 dBA, half for each 3 dB more. */
export const recommended = (level: number): number => eight / 2 ** ((level - 85) / 3)

/**
 * Noise dose of a day by the US rule.
 * @param parts Level, dBA, and time, s, of each part of the day.
 * @returns A share; above one the day is too loud.
 */
export const noiseDose = (parts: readonly { readonly level: number; readonly time: number }[]): number => parts.reduce((sum, p) => sum + p.time / permittedByRule(p.level), 0)

/** How long a driver may sit in a machine's noise without ear protection. */
export const noise = calculation({
  id: 'noise',
  title: 'How long without ear protection',
  about: 'A tractor without a cab is about as loud as a shout at arm\'s length. The rule and the recommendation differ: the shorter one keeps people from going deaf slowly. Ear protection for the whole shift is cheaper than counting minutes.',
  sources: ['cfr-1910-95', 'niosh-98-126'],
  inputs: {
    level: { symbol: 'L', label: 'noise at the driver\'s ear', kind: 'soundLevel', range: [70, 130], formulaUnit: '' },
    shift: { symbol: 't', label: 'a full shift', kind: 'hours', range: [3600, 57_600] },
  },
  outputs: {
    rule: { symbol: 'T', label: 'that the US rule allows', kind: 'duration', tex: '\\frac{8\\,\\text{h}}{2^{(@level - 90)/5}}', round: 'down' },
    recommended: { symbol: 'T_r', label: 'that NIOSH recommends at most', kind: 'duration', tex: '\\frac{8\\,\\text{h}}{2^{(@level - 85)/3}}', round: 'down' },
    dose: { symbol: 'D', label: 'of the day\'s dose by the rule, in a full shift', kind: 'share', tex: '\\frac{@shift}{T}', round: 'up' },
  },
  compute: (x) => ({ rule: permittedByRule(x.level), recommended: recommended(x.level), dose: noiseDose([{ level: x.level, time: x.shift }]) }),
})
