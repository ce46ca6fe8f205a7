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
  title: 'Rain running to the rail',
  about:
    'Time for rain on the outside edge to reach the rail as a thin sheet, and what then arrives at a length of rail for as long as that rain lasts. It holds for a sealed, even surface without ruts. Gaps and ditches must take that flow; anything that needs more than a shovel is work for a licensed engineer.',
  inputs: {
    length: {
      symbol: 'L',
      label: 'way from the outside edge to the rail',
      kind: 'width',
      range: [2, 46],
      formulaUnit: 'ft',
      howTo: 'Tape square across the track.',
    },
    slope: {
      symbol: 's',
      label: 'cross-fall',
      kind: 'fineShare',
      range: [0.002, 0.16],
      formulaUnit: '',
      howTo: "Set a level board square across the track; fall over the board's length.",
    },
    rain: {
      symbol: 'i',
      label: 'rate of rain',
      kind: 'rainRate',
      range: [2.7e-7, 7.1e-5],
      formulaUnit: 'in/h',
      howTo: 'From the weather service: rain in a short cloudburst.',
    },
    roughness: {
      symbol: 'n',
      label: 'roughness of the surface to thin flow',
      kind: 'ratio',
      range: [0.01, 0.5],
      formulaUnit: '',
      howTo: 'From tables: 0.011 for smooth bare ground.',
    },
    runoff: {
      symbol: 'C',
      label: 'share of the rain that runs off',
      kind: 'share',
      range: [0.05, 1],
      formulaUnit: '',
      howTo: 'From tables: nine tenths for a sealed surface.',
    },
    rail: {
      symbol: 'L_1',
      label: 'length of rail',
      kind: 'distance',
      range: [1, 500],
      formulaUnit: 'ft',
      howTo: 'A choice of the manual.',
    },
  },
  outputs: {
    time: {
      symbol: 't',
      label: 'time for water from the outside edge to reach the rail',
      kind: 'minutes',
      tex: '0.94\\,\\frac{(@roughness \\cdot @length)^{0.6}}{@rain^{0.4} \\cdot @slope^{0.3}}\\,\\text{min}',
    },
    flow: {
      symbol: 'Q',
      label: 'water arriving at that length of rail',
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
