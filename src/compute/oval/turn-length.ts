import { calculation } from '../calculation.ts'
import { offsetInput, radiusInput } from './oval-inputs.ts'

/** Length of one turn along the measuring line. */
export const turnLength = calculation({
  id: 'turn-length',
  inputs: { radius: radiusInput, offset: offsetInput },
  outputs: {
    length: { symbol: 'L_t', kind: 'distance', tex: '\\pi(@radius + @offset)' },
  },
  sources: ['geometry'],
  compute: ({ radius, offset }) => ({ length: Math.PI * (radius + offset) }),
})
