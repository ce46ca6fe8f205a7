import { calculation } from '../calculation.ts'

/** How much longer a lap becomes when it is run farther out. */
export const lapExtra = calculation({
  id: 'lap-extra',
  title: 'Extra length of a lap farther out',
  about:
    'The same for every oval, large or small: two half turns make one full circle. It is also the error in a lap when the pylons are set back off their surveyed line.',
  inputs: {
    out: {
      symbol: 'x',
      label: 'how much farther out',
      kind: 'distance',
      range: [0, 60],
      howTo: 'Tape square out from the rail.',
    },
  },
  outputs: {
    extra: {
      symbol: '\\Delta L',
      label: 'extra length of one lap',
      kind: 'distance',
      tex: '2\\pi \\cdot @out',
    },
  },
  sources: ['geometry'],
  compute: ({ out }) => ({ extra: 2 * Math.PI * out }),
})
