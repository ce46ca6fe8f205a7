import { calculation, refuse } from '../calculation.ts'
import { heatIndex } from './felt-temperature.ts'

const fahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67

/** Where the weather service's chart ends, °F: beyond it the regression has nothing behind it. */
const hottest = 137

/**
 * Risk level of a heat index, °F, from 1 to 4 (OSHA, Using the Heat Index: below 91, to 103, to
 * 115, above; the bands share their ends, the lower level holds at 103 and 115).
 */
export const heatRisk = (index: number): number =>
  1 + Number(index >= 91) + Number(index > 103) + Number(index > 115)

/** Heat index in the shade, K, and how much care it asks for. */
export const heat = calculation({
  id: 'heat',
  sources: ['nws-heat-index', 'osha-heat'],
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', range: [283, 323], formulaUnit: '°F' },
    humidity: { symbol: 'RH', kind: 'share', range: [0, 1], formulaUnit: '%' },
  },
  outputs: {
    index: {
      symbol: 'HI',
      kind: 'temperature',
      tex: '-42.379 + 2.04901523\\,@temperature + 10.14333127\\,@humidity - 0.22475541\\,@temperature\\,@humidity - \\dots',
    },
    risk: {
      symbol: 'r',
      kind: 'count',
      tex: '1 + [@index \\ge 91\\,°\\text{F}] + [@index > 103\\,°\\text{F}] + [@index > 115\\,°\\text{F}]',
    },
  },
  refusals: ['beyond-heat-chart'],
  compute: (x) => {
    const index = heatIndex(fahrenheit(x.temperature), x.humidity * 100)
    const no = refuse('beyond-heat-chart')
    return index > hottest
      ? { index: no, risk: no }
      : { index: (index + 459.67) / 1.8, risk: heatRisk(index) }
  },
})
