import { calculation } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { railLengthInput } from './oval-inputs.ts'

/** How many stations stand around the rail. */
export const stationCount = calculation({
  id: 'station-count',
  title: 'Stations around the rail',
  about:
    'The first station stands at the start of the home straight and counts as 0. The last gap, back to station 0, may be shorter than the rest.',
  inputs: {
    rail: railLengthInput,
    spacing: {
      symbol: 's',
      label: 'distance between stations along the rail',
      kind: 'distance',
      range: [3, 160],
      howTo: 'A choice of the manual.',
    },
  },
  outputs: {
    count: {
      symbol: 'n',
      label: 'stations around the rail',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@rail}{@spacing} \\right\\rceil',
    },
  },
  sources: ['common-practice'],
  compute: ({ rail, spacing }) => ({ count: wholeUp(rail / spacing) }),
})
