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
  title: 'Distance to an overhead line',
  about:
    'Read up to the next step of the table. Where nobody knows the voltage, it counts as the third step, and the owner of the line is asked before a bed goes up. A line on steel towers may carry more than that: nobody tips near it until its owner has answered. Local rules may ask for more. A line is live until its owner says in writing that it is not.',
  sources: ['cfr-1926-1408'],
  inputs: {
    voltage: {
      symbol: 'U',
      label: 'voltage of the line',
      kind: 'voltage',
      range: [0, 1e6],
      howTo: 'Ask the owner of the line; never judge it by eye.',
    },
  },
  outputs: {
    distance: {
      symbol: 'd',
      label: 'to keep at least',
      kind: 'width',
      tex: '\\text{table A}(@voltage)',
      round: 'up',
    },
  },
  compute: ({ voltage }) => {
    const row = table.find(([most]) => voltage <= most * (1 + 1e-9))
    return {
      distance: row
        ? row[1] * foot
        : refuse('the table ends at 1,000 kV: the owner of the line decides'),
    }
  },
})
