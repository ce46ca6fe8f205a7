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
  title: 'How hot it feels',
  about:
    'The heat index says how hot shaded air feels with its humidity. Full sun adds up to fifteen degrees Fahrenheit, eight degrees Celsius. The risk goes from 1 (lower) over 2 (moderate: rests and water are planned) and 3 (high: heavy work waits) to 4 (very high: only what cannot wait). The daily high is held against the mean humidity here, which is on the safe side: at the hottest hour the air is usually drier.',
  sources: ['nws-heat-index', 'osha-heat'],
  inputs: {
    temperature: {
      symbol: 'T',
      label: 'air temperature',
      kind: 'temperature',
      range: [283, 323],
      formulaUnit: '°F',
    },
    humidity: {
      symbol: 'RH',
      label: 'relative humidity',
      kind: 'share',
      range: [0, 1],
      formulaUnit: '%',
    },
  },
  outputs: {
    index: {
      symbol: 'HI',
      label: 'heat index in the shade',
      kind: 'temperature',
      tex: '-42.379 + 2.04901523\\,@temperature + 10.14333127\\,@humidity - 0.22475541\\,@temperature\\,@humidity - \\dots',
    },
    risk: {
      symbol: 'r',
      label: 'risk level, from 1 (lower) to 4 (very high)',
      kind: 'count',
      tex: '1 + [HI \\ge 91\\,°\\text{F}] + [HI > 103\\,°\\text{F}] + [HI > 115\\,°\\text{F}]',
    },
  },
  compute: (x) => {
    const index = heatIndex(fahrenheit(x.temperature), x.humidity * 100)
    const no = refuse("hotter than the weather service's chart goes: no work")
    return index > hottest
      ? { index: no, risk: no }
      : { index: (index + 459.67) / 1.8, risk: heatRisk(index) }
  },
})
