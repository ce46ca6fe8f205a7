import { lapLength } from '../../model/oval-shape.ts'
import { calculation } from '../calculation.ts'
import { radiusInput, straightInput } from './oval-inputs.ts'

/** Length of the rail or pylon line once around. */
export const railLength = calculation({
  id: 'rail-length',
  title: 'Length of the rail',
  about:
    'Once around at the rail. It is shorter than the lap, which is measured some way out. Material that creeps to the rail, drains and pylons are counted over this length.',
  inputs: { straight: straightInput, radius: radiusInput },
  outputs: {
    length: {
      symbol: 'L_r',
      label: 'rail, once around',
      kind: 'distance',
      tex: '2 \\cdot @straight + 2\\pi \\cdot @radius',
    },
  },
  sources: ['geometry'],
  compute: ({ straight, radius }) => ({ length: lapLength(straight, radius, 0) }),
})
