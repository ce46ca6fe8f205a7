import { calculation } from '../calculation.ts'

/** ANSI Z535.2 (2011), clause 9.2.3: message text is 1/300 of the distance at which it is read, the signal word 1/150. */
export const readingRatios = { message: 300, signal: 150 } as const

/** Letter heights for a sign or sheet read from a distance, in good light. */
export const letterHeight = calculation({
  id: 'letter-height',
  title: 'Letters for a sign that is read from a distance',
  about: 'Height of capitals in good light. In poor light, or for older eyes, take twice as much. A sheet with a whole procedure is read from near; what must be read across a barn door is a title, a signal word and three lines.',
  sources: ['ansi-z535-2'],
  inputs: { distance: { symbol: 'd', label: 'distance from which it is read', kind: 'width', range: [0.3, 100] } },
  outputs: {
    message: { symbol: 'h', label: 'high, the capitals of the message', kind: 'waterDepth', tex: '\\frac{@distance}{300}', round: 'up' },
    signal: { symbol: 'h_s', label: 'high, the signal word', kind: 'waterDepth', tex: '\\frac{@distance}{150}', round: 'up' },
  },
  compute: ({ distance }) => ({ message: distance / readingRatios.message, signal: distance / readingRatios.signal }),
})
