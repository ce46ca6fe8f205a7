import { toUnit } from '../../model/quantity/format-quantity.ts'
import { foot, inch } from '../../model/quantity/units.ts'
import { calculation } from '../calculation.ts'

/**
 * Kinematic-wave constant for feet, inches an hour and minutes. In SI units the formula has none: t
 * = (n L)^0.6 / (i^0.4 s^0.3) seconds, and 0.3048^0.6 / (0.0254/3600)^0.4 / 60 = 0.9395. A foot of
 * width and of length under an inch an hour gives 144/231 gal in 60 min: 0.01039 gal/min.
 */
const MINUTES = foot ** 0.6 / (inch / 3600) ** 0.4 / 60

/** Rain that runs off a sealed track: how soon and how much reaches the rail. */
export const sheetFlow = calculation({
  id: 'sheet-flow',
  inputs: {
    length: { symbol: 'L', kind: 'width', range: [2, 46], formulaUnit: 'ft' },
    slope: { symbol: 's', kind: 'fineShare', range: [0.002, 0.16], formulaUnit: '' },
    rain: { symbol: 'i', kind: 'rainRate', range: [2.7e-7, 7.1e-5], formulaUnit: 'in/h' },
    roughness: { symbol: 'n', kind: 'ratio', range: [0.01, 0.5], formulaUnit: '' },
    runoff: { symbol: 'C', kind: 'share', range: [0.05, 1], formulaUnit: '' },
    rail: { symbol: 'L_1', kind: 'distance', range: [1, 500], formulaUnit: 'ft' },
  },
  outputs: {
    time: {
      symbol: 't',
      kind: 'minutes',
      tex: '0.94\\,\\frac{(@roughness \\cdot @length)^{0.6}}{@rain^{0.4} \\cdot @slope^{0.3}}\\,\\text{min}',
    },
    flow: {
      symbol: 'Q',
      kind: 'waterFlow',
      tex: '0.01039 \\cdot @runoff \\cdot @rain \\cdot @length \\cdot @rail\\,\\text{gal/min}',
    },
  },
  sources: ['fhwa-hec-22', 'nrcs-tr-55'],
  compute: ({ length, slope, rain, roughness, runoff, rail }) => ({
    time:
      60 *
      MINUTES *
      ((roughness * toUnit(length, 'ft')) ** 0.6 / (toUnit(rain, 'in/h') ** 0.4 * slope ** 0.3)),
    flow: runoff * rain * length * rail,
  }),
})
