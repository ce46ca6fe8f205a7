import { inch } from '../../model/quantity/units.ts'
import { calculation } from '../calculation.ts'

/**
 * ANSI Z535.2 (2011), clause 9.2.3: message text is 1/300 of the distance at which it is read, the
 * signal word 1/150.
 */
export const readingRatios = { message: 300, signal: 150 } as const

/**
 * The table beside that clause: letters for poor light are this much higher, and none is smaller
 * than the least.
 */
const poorLight = 2.1
const least = 0.16 * inch

/** Letter heights (m) for a sign or sheet read from a distance (m). */
export const letterHeight = calculation({
  id: 'letter-height',
  sources: ['ansi-z535-2'],
  inputs: {
    distance: { symbol: 'd', kind: 'width', range: [0.3, 100] },
  },
  outputs: {
    message: {
      symbol: 'h',
      kind: 'waterDepth',
      tex: '\\max\\left(\\frac{@distance}{300},\\,0.16\\,\\text{in}\\right)',
      round: 'up',
    },
    signal: {
      symbol: 'h_s',
      kind: 'waterDepth',
      tex: '\\max\\left(\\frac{@distance}{150},\\,0.16\\,\\text{in}\\right)',
      round: 'up',
    },
    poor: { symbol: 'h_p', kind: 'waterDepth', tex: '2.1\\,@message', round: 'up' },
  },
  compute: ({ distance }) => {
    const message = Math.max(distance / readingRatios.message, least)
    return {
      message,
      signal: Math.max(distance / readingRatios.signal, least),
      poor: poorLight * message,
    }
  },
})
