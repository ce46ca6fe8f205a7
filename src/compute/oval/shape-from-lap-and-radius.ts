import { straightFrom } from '../../model/oval-shape.ts'
import { calculation, refuse } from '../calculation.ts'
import { lapInput, offsetInput, radiusInput } from './oval-inputs.ts'

/**
 * The oval of a certified lap and a turn radius: what the two half circles leave is two straights.
 */
export const shapeFromLapAndRadius = calculation({
  id: 'shape-from-lap-and-radius',
  inputs: {
    measuredLap: { ...lapInput, symbol: 'L_0' },
    measuredRadius: { ...radiusInput, symbol: 'R_0' },
    offset: offsetInput,
  },
  outputs: {
    lap: { symbol: 'L', kind: 'distance', tex: '@measuredLap' },
    radius: { symbol: 'R', kind: 'distance', tex: '@measuredRadius' },
    straight: {
      symbol: 'S',
      kind: 'distance',
      tex: '\\tfrac{1}{2}\\bigl(@lap - 2\\pi(@radius + @offset)\\bigr)',
    },
  },
  sources: ['geometry', 'agco-19-04', 'pa-58-185-131'],
  refusals: ['circle-too-long'],
  compute: ({ measuredLap, measuredRadius, offset }) => {
    const straight = straightFrom(measuredLap, measuredRadius, offset)
    const known = { lap: measuredLap, radius: measuredRadius }
    return {
      ...known,
      straight: straight >= 0 ? straight : refuse('circle-too-long'),
    }
  },
})
