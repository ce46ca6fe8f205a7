import { calculation } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { railLengthInput } from './oval-inputs.ts'

/** How many stations stand around the rail. */
export const stationCount = calculation({
  id: 'station-count',
  inputs: {
    rail: railLengthInput,
    spacing: { symbol: 's', kind: 'distance', range: [3, 160] },
  },
  outputs: {
    count: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@rail}{@spacing} \\right\\rceil',
    },
  },
  sources: ['common-practice'],
  compute: ({ rail, spacing }) => ({ count: wholeUp(rail / spacing) }),
})
