import { calculation } from '../calculation.ts'

/** How many readings a depth survey takes. */
export const surveyReadings = calculation({
  id: 'survey-readings',
  title: 'Readings of a depth survey',
  about:
    'One reading on every line at every station, always at the same places, so that surveys can be compared.',
  inputs: {
    stations: {
      symbol: 'n_s',
      label: 'stations around the oval',
      kind: 'count',
      range: [1, 200],
      howTo: 'A choice of the superintendent.',
    },
    lines: {
      symbol: 'n_l',
      label: 'lines across at each station',
      kind: 'count',
      range: [1, 20],
      howTo: 'Rail, middle, outside.',
    },
  },
  outputs: {
    readings: { symbol: 'n', label: 'readings', kind: 'count', tex: '@stations \\cdot @lines' },
  },
  sources: ['common-practice'],
  compute: ({ stations, lines }) => ({ readings: stations * lines }),
})
