import { toUnit } from '../../model/quantity/format-quantity.ts'
import { calculation, refuse } from '../calculation.ts'
import { windChill } from './felt-temperature.ts'

/** What the formula is good for: at 50 °F and below, in wind above 3 mph. */
const [warmest, stillest] = [50, 3]

/** One degree Fahrenheit in kelvins, and what 0 °F is. */
const [degree, zero] = [5 / 9, 459.67]

/** How cold the air feels in wind. */
export const chill = calculation({
  id: 'wind-chill',
  sources: ['nws-wind-chill'],
  inputs: {
    air: { symbol: 'T', kind: 'temperature', range: [220, 300], formulaUnit: '°F' },
    wind: { symbol: 'v', kind: 'wind', range: [0, 50], formulaUnit: 'mph' },
  },
  outputs: {
    felt: {
      symbol: 'T_w',
      kind: 'temperature',
      formulaUnit: '°F',
      tex: '35.74 + 0.6215 \\cdot @air - 35.75 \\cdot @wind^{0.16} + 0.4275 \\cdot @air \\cdot @wind^{0.16}',
    },
  },
  refusals: ['not-cold', 'no-wind'],
  compute: ({ air, wind }) => {
    const [t, v] = [toUnit(air, '°F'), toUnit(wind, 'mph')]
    if (t > warmest) return { felt: refuse('not-cold') }
    if (v < stillest) return { felt: refuse('no-wind') }
    return { felt: (windChill(t, v) + zero) * degree }
  },
})
