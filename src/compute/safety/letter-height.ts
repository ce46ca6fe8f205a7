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
  title: 'Letters for a sign that is read from a distance',
  about:
    'Height of capitals in good light, and in poor light or for older eyes. A sheet with a whole procedure is read from near; what must be read across a barn door is a title, a signal word and three lines.',
  sources: ['ansi-z535-2'],
  inputs: {
    distance: {
      symbol: 'd',
      label: 'distance from which it is read',
      kind: 'width',
      range: [0.3, 100],
      howTo: 'Pace it from where people stand to where the sign hangs.',
    },
  },
  outputs: {
    message: {
      symbol: 'h',
      label: 'high, the capitals of the message',
      kind: 'waterDepth',
      tex: '\\max\\left(\\frac{@distance}{300},\\,0.16\\,\\text{in}\\right)',
      round: 'up',
    },
    signal: {
      symbol: 'h_s',
      label: 'high, the signal word',
      kind: 'waterDepth',
      tex: '\\max\\left(\\frac{@distance}{150},\\,0.16\\,\\text{in}\\right)',
      round: 'up',
    },
    poor: {
      symbol: 'h_p',
      label: 'high, the capitals of the message, in poor light',
      kind: 'waterDepth',
      tex: '2.1\\,@message',
      round: 'up',
    },
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
