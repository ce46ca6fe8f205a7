import { foot } from '../../model/quantity/units.ts'
import { calculation, refuse } from '../calculation.ts'

/** Table A of 29 CFR 1926.1408: up to and including so many volts, so many feet. */
const table = [
  [50e3, 10],
  [200e3, 15],
  [350e3, 20],
  [500e3, 25],
  [750e3, 35],
  [1000e3, 45],
] as const

/** Least distance (m) between a raised bed or boom and a live overhead line. */
export const powerLine = calculation({
  id: 'power-line',
  sources: ['cfr-1926-1408'],
  inputs: {
    voltage: { symbol: 'U', kind: 'voltage', range: [0, 1e6] },
  },
  outputs: {
    distance: { symbol: 'd', kind: 'width', tex: '\\text{line-table}(@voltage)', round: 'up' },
  },
  told: { most: { si: Math.max(...table.map(([most]) => most)), kind: 'voltage' } },
  terms: ['line-table'],
  refusals: ['beyond-line-table'],
  compute: ({ voltage }) => {
    const row = table.find(([most]) => voltage <= most * (1 + 1e-9))
    return {
      distance: row ? row[1] * foot : refuse('beyond-line-table'),
    }
  },
})
