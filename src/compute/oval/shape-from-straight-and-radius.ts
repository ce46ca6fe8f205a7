import { lapLength } from '../../model/oval-shape.ts'
import { calculation } from '../calculation.ts'
import { offsetInput, radiusInput, straightInput } from './oval-inputs.ts'

/** The oval of a taped straight and turn radius. */
export const shapeFromStraightAndRadius = calculation({
  id: 'shape-from-straight-and-radius',
  inputs: {
    measuredStraight: { ...straightInput, symbol: 'S_0' },
    measuredRadius: { ...radiusInput, symbol: 'R_0' },
    offset: offsetInput,
  },
  outputs: {
    straight: { symbol: 'S', kind: 'distance', tex: '@measuredStraight' },
    radius: { symbol: 'R', kind: 'distance', tex: '@measuredRadius' },
    lap: { symbol: 'L', kind: 'distance', tex: '2 \\cdot @straight + 2\\pi(@radius + @offset)' },
  },
  sources: ['geometry', 'agco-19-04', 'pa-58-185-131'],
  compute: ({ measuredStraight, measuredRadius, offset }) => ({
    straight: measuredStraight,
    radius: measuredRadius,
    lap: lapLength(measuredStraight, measuredRadius, offset),
  }),
})
