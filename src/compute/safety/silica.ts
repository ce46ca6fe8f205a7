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
  title: 'How long in visible dust',
  about:
    'Stone dust and sand hold quartz; its finest dust scars lungs for good and is not seen. The rule looks at the mean of eight hours: from the action level on, dust is measured and people are told; at the limit the work is changed. Water on the surface and a closed cab cost less than either. The times here are as uncertain as the dust is: they say why the surface is wetted, not how long it may be left dry.',
  sources: ['cfr-1926-1153'],
  inputs: {
    dust: {
      symbol: 'c',
      label: 'respirable quartz in the air while it is dusty',
      kind: 'dustLevel',
      range: [1e-9, 5e-6],
      howTo:
        'Only a measurement by an industrial hygienist tells; ask the state health department.',
    },
  },
  outputs: {
    action: {
      symbol: 't_a',
      label: 'until the action level is reached',
      kind: 'duration',
      tex: '\\frac{25\\,\\text{µg/m³}}{@dust} \\cdot 8\\,\\text{h}',
      round: 'down',
    },
    limit: {
      symbol: 't_l',
      label: 'until the limit is reached',
      kind: 'duration',
      tex: '\\frac{50\\,\\text{µg/m³}}{@dust} \\cdot 8\\,\\text{h}',
      round: 'down',
    },
    hourly: {
      symbol: 'c_1',
      label: 'in the mean of eight hours, from each dusty hour',
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
