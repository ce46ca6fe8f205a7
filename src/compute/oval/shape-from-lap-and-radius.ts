import { straightFrom } from '../../model/oval-shape.ts'
import { calculation, refuse } from '../calculation.ts'
import { lapInput, offsetInput, radiusInput } from './oval-inputs.ts'

/**
 * The oval of a certified lap and a turn radius: what the two half circles leave is two straights.
 */
export const shapeFromLapAndRadius = calculation({
  id: 'shape-from-lap-and-radius',
  title: 'Shape of the oval from its lap and turn radius',
  about:
    'Two equal straights and two half circles. The radius is half the distance between the rails of the straights; where the straight ends is harder to see than how far apart the rails stand.',
  inputs: {
    measuredLap: { ...lapInput, symbol: 'L_0' },
    measuredRadius: { ...radiusInput, symbol: 'R_0' },
    offset: offsetInput,
  },
  outputs: {
    lap: {
      symbol: 'L',
      label: 'one lap at the measuring line',
      kind: 'distance',
      tex: '@measuredLap',
    },
    radius: {
      symbol: 'R',
      label: 'turn radius at the rail',
      kind: 'distance',
      tex: '@measuredRadius',
    },
    straight: {
      symbol: 'S',
      label: 'length of one straight',
      kind: 'distance',
      tex: '\\tfrac{1}{2}\\bigl(@lap - 2\\pi(@radius + @offset)\\bigr)',
    },
  },
  sources: ['geometry', 'agco-19-04', 'pa-58-185-131'],
  compute: ({ measuredLap, measuredRadius, offset }) => {
    const straight = straightFrom(measuredLap, measuredRadius, offset)
    const known = { lap: measuredLap, radius: measuredRadius }
    return {
      ...known,
      straight:
        straight >= 0
          ? straight
          : refuse('a full circle of that radius is already longer than the lap'),
    }
  },
})
