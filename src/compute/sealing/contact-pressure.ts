import { calculation, refuse } from '../calculation.ts'
import { GRAVITY } from '../oval/curve-balance.ts'

/**
 * How hard a truck tire and a drum press on the surface. A drum that has sunk a little touches it
 * from its lowest point to where its circle leaves the surface, c = √(D·z).
 */
export const contactPressure = calculation({
  id: 'contact-pressure',
  inputs: {
    inflation: { symbol: 'p_i', kind: 'pressure', range: [20_000, 1_100_000] },
    mass: { symbol: 'm', kind: 'machineMass', range: [40, 60_000] },
    share: { symbol: 'k', kind: 'share', range: [0.2, 1] },
    width: { symbol: 'w', kind: 'width', range: [0.3, 20] },
    diameter: { symbol: 'D', kind: 'smallWidth', range: [0.3, 2.5] },
    leastSink: { symbol: 'z_q', kind: 'dent', range: [0.0005, 0.03] },
    mostSink: { symbol: 'z_s', kind: 'dent', range: [0.0005, 0.03] },
  },
  outputs: {
    tire: { symbol: 'p_t', kind: 'pressure', tex: '@inflation' },
    short: { symbol: 'c_q', kind: 'stripe', tex: '\\sqrt{@diameter \\cdot @leastSink}' },
    long: { symbol: 'c_s', kind: 'stripe', tex: '\\sqrt{@diameter \\cdot @mostSink}' },
    hardest: {
      symbol: 'p_q',
      kind: 'pressure',
      tex: '\\frac{@share \\cdot @mass \\cdot g}{@width \\cdot @short}',
    },
    softest: {
      symbol: 'p_s',
      kind: 'pressure',
      tex: '\\frac{@share \\cdot @mass \\cdot g}{@width \\cdot @long}',
    },
    least: { symbol: 'r_q', kind: 'ratio', tex: '\\frac{@tire}{@hardest}' },
    most: { symbol: 'r_s', kind: 'ratio', tex: '\\frac{@tire}{@softest}' },
  },
  refusals: ['sinks-out-of-order'],
  sources: ['geometry', 'common-practice'],
  compute: ({ inflation, mass, share, width, diameter, leastSink, mostSink }) => {
    if (mostSink < leastSink) {
      const no = refuse('sinks-out-of-order')
      return { tire: inflation, short: no, long: no, hardest: no, softest: no, least: no, most: no }
    }
    const weight = share * mass * GRAVITY
    const short = Math.sqrt(diameter * leastSink)
    const long = Math.sqrt(diameter * mostSink)
    const hardest = weight / (width * short)
    const softest = weight / (width * long)
    return {
      tire: inflation,
      short,
      long,
      hardest,
      softest,
      least: inflation / hardest,
      most: inflation / softest,
    }
  },
})
