import { lapLength } from '../../model/oval-shape.ts'
import { calculation } from '../calculation.ts'
import { offsetInput, radiusInput, straightInput } from './oval-inputs.ts'

/** The oval of a taped straight and turn radius. */
export const shapeFromStraightAndRadius = calculation({
  id: 'shape-from-straight-and-radius',
  title: 'Shape of the oval from one straight and the turn radius',
  about:
    'Two equal straights and two half circles. The lap worked out here is no certificate: races are timed over the length that a licensed surveyor has certified.',
  inputs: {
    measuredStraight: { ...straightInput, symbol: 'S_0' },
    measuredRadius: { ...radiusInput, symbol: 'R_0' },
    offset: offsetInput,
  },
  outputs: {
    straight: {
      symbol: 'S',
      label: 'length of one straight',
      kind: 'distance',
      tex: '@measuredStraight',
    },
    radius: {
      symbol: 'R',
      label: 'turn radius at the rail',
      kind: 'distance',
      tex: '@measuredRadius',
    },
    lap: {
      symbol: 'L',
      label: 'one lap at the measuring line',
      kind: 'distance',
      tex: '2 \\cdot @straight + 2\\pi(@radius + @offset)',
    },
  },
  sources: ['geometry', 'agco-19-04', 'pa-58-185-131'],
  compute: ({ measuredStraight, measuredRadius, offset }) => ({
    straight: measuredStraight,
    radius: measuredRadius,
    lap: lapLength(measuredStraight, measuredRadius, offset),
  }),
})
