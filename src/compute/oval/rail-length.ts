import { lapLength } from '../../model/oval-shape.ts'
import { calculation } from '../calculation.ts'
import { radiusInput, straightInput } from './oval-inputs.ts'

/** Length of the rail or pylon line once around. */
export const railLength = calculation({
  id: 'rail-length',
  inputs: { straight: straightInput, radius: radiusInput },
  outputs: {
    length: { symbol: 'L_r', kind: 'distance', tex: '2 \\cdot @straight + 2\\pi \\cdot @radius' },
  },
  sources: ['geometry'],
  compute: ({ straight, radius }) => ({ length: lapLength(straight, radius, 0) }),
})
