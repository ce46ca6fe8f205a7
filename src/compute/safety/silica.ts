import { calculation } from '../calculation.ts'

const hour = 3600
const eight = 8 * hour

/** Limits of 29 CFR 1926.1153 for respirable crystalline silica, kg/m³ over eight hours. */
const limit = 50e-9
const action = 25e-9

/**
 * Mean dust of a day of eight hours.
 * @param parts Dust in the air, kg/m³, and time, s, of each part of the day.
 * @returns kg/m³ over eight hours.
 * @see cfr-1926-1153
 */
export const eightHourMean = (
  parts: readonly { readonly dust: number; readonly time: number }[],
): number => parts.reduce((sum, p) => sum + p.dust * p.time, 0) / eight

/**
 * How long (s) dry, visibly dusty work may last before the rules on crystalline silica ask for
 * more.
 */
export const silica = calculation({
  id: 'silica',
  sources: ['cfr-1926-1153'],
  inputs: {
    dust: { symbol: 'c', kind: 'dustLevel', range: [1e-9, 5e-6] },
  },
  outputs: {
    action: {
      symbol: 't_a',
      kind: 'duration',
      tex: '\\frac{25\\,\\text{µg/m³}}{@dust} \\cdot 8\\,\\text{h}',
      round: 'down',
    },
    limit: {
      symbol: 't_l',
      kind: 'duration',
      tex: '\\frac{50\\,\\text{µg/m³}}{@dust} \\cdot 8\\,\\text{h}',
      round: 'down',
    },
    hourly: {
      symbol: 'c_1',
      kind: 'dustLevel',
      tex: '\\frac{@dust \\cdot 1\\,\\text{h}}{8\\,\\text{h}}',
      round: 'up',
    },
  },
  compute: ({ dust }) => ({
    action: (action / dust) * eight,
    limit: (limit / dust) * eight,
    hourly: eightHourMean([{ dust, time: hour }]),
  }),
})
