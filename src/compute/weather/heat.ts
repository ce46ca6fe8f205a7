import { calculation, refuse } from '../calculation.ts'
import { adjustment, heatIndex, regression, simpleIndex } from './felt-temperature.ts'

const fahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67
const kelvin = (degrees: number): number => (degrees + 459.67) / 1.8

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
    simple: {
      symbol: 'S',
      kind: 'temperature',
      tex: '0.5\\left(@temperature + 61 + 1.2\\,(@temperature - 68) + 0.094\\,@humidity\\right)',
      formulaUnit: '°F',
    },
    regression: {
      symbol: 'B',
      kind: 'temperature',
      tex: '-42.379 + 2.04901523\\,@temperature + 10.14333127\\,@humidity - 0.22475541\\,@temperature\\,@humidity - 0.00683783\\,@temperature^2 - 0.05481717\\,@humidity^2 + 0.00122874\\,@temperature^2\\,@humidity + 0.00085282\\,@temperature\\,@humidity^2 - 0.00000199\\,@temperature^2\\,@humidity^2',
      formulaUnit: '°F',
    },
    adjustment: {
      symbol: 'A',
      kind: 'ratio',
      tex: '[@humidity > 85]\\,[80 \\le @temperature \\le 87]\\left(0.02\\,(@humidity - 85)\\,(87 - @temperature)\\right) - [@humidity < 13]\\,[80 \\le @temperature \\le 112]\\left(0.25\\,(13 - @humidity)\\,\\sqrt{\\frac{17 - |@temperature - 95|}{17}}\\right)',
    },
    index: {
      symbol: 'HI',
      kind: 'temperature',
      tex: '[@simple < 80]\\,@simple + [@simple \\ge 80]\\left(@regression + @adjustment\\right)',
      formulaUnit: '°F',
    },
    risk: {
      symbol: 'r',
      kind: 'count',
      tex: '1 + [@index \\ge 91] + [@index > 103] + [@index > 115]',
    },
  },
  refusals: ['beyond-heat-chart'],
  compute: (x) => {
    const [t, rh] = [fahrenheit(x.temperature), x.humidity * 100]
    const index = heatIndex(t, rh)
    const no = refuse('beyond-heat-chart')
    return {
      simple: kelvin(simpleIndex(t, rh)),
      regression: kelvin(regression(t, rh)),
      adjustment: adjustment(t, rh),
      ...(index > hottest
        ? { index: no, risk: no }
        : { index: kelvin(index), risk: heatRisk(index) }),
    }
  },
})
