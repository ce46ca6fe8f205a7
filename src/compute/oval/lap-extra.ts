import { calculation } from '../calculation.ts'

/** How much longer a lap becomes when it is run farther out. */
export const lapExtra = calculation({
  id: 'lap-extra',
  inputs: {
    out: { symbol: 'x', kind: 'distance', range: [0, 60] },
  },
  outputs: {
    extra: { symbol: '\\Delta L', kind: 'distance', tex: '2\\pi \\cdot @out' },
  },
  sources: ['geometry'],
  compute: ({ out }) => ({ extra: 2 * Math.PI * out }),
})
