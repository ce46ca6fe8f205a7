import { calculation, refuse } from '../calculation.ts'
import { heatIndex } from './felt-temperature.ts'

const fahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67

/** Where the weather service's chart ends, °F: beyond it the regression has nothing behind it. */
const hottest = 137

/** Heat index in the shade, K. */
export const heat = calculation({
  id: 'heat',
  title: 'How hot it feels',
  about: 'The heat index says how hot shaded air feels with its humidity. Full sun adds up to fifteen degrees Fahrenheit. From 91 °F on the work is planned with rests and water; from 103 °F heavy work waits. The daily high is held against the mean humidity here, which is on the safe side: at the hottest hour the air is usually drier.',
  sources: ['nws-heat-index', 'osha-heat'],
  inputs: {
    temperature: { symbol: 'T', label: 'air temperature', kind: 'temperature', range: [283, 323], formulaUnit: '°F' },
    humidity: { symbol: 'RH', label: 'relative humidity', kind: 'share', range: [0, 1], formulaUnit: '%' },
  },
  outputs: { index: { symbol: 'HI', label: 'heat index in the shade', kind: 'temperature', tex: '-42.379 + 2.04901523\\,@temperature + 10.14333127\\,@humidity - 0.22475541\\,@temperature\\,@humidity - \\dots' } },
  compute: (x) => {
    const index = heatIndex(fahrenheit(x.temperature), x.humidity * 100)
    return { index: index > hottest ? refuse('hotter than the weather service\'s chart goes: no work') : (index + 459.67) / 1.8 }
  },
})
