import { calculation } from '../calculation.ts'

/** How many readings a depth survey takes. */
export const surveyReadings = calculation({
  id: 'survey-readings',
  inputs: {
    stations: { symbol: 'n_s', kind: 'count', range: [1, 200] },
    lines: { symbol: 'n_l', kind: 'count', range: [1, 20] },
  },
  outputs: {
    readings: { symbol: 'n', kind: 'count', tex: '@stations \\cdot @lines' },
  },
  sources: ['common-practice'],
  compute: ({ stations, lines }) => ({ readings: stations * lines }),
})
