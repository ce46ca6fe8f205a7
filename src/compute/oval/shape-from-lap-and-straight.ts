import { radiusFrom } from '../../model/oval-shape.ts'
import { calculation, refuse } from '../calculation.ts'
import { lapInput, offsetInput, straightInput } from './oval-inputs.ts'

/** The oval of a certified lap and a taped straight: what is left of the lap is one full circle. */
export const shapeFromLapAndStraight = calculation({
  id: 'shape-from-lap-and-straight',
  title: 'Shape of the oval from its lap and one straight',
  about:
    'Two equal straights and two half circles. The lap is measured some way out from the rail, the radius to the rail itself. A track with spiral transitions has tighter turns than this radius.',
  inputs: {
    measuredLap: { ...lapInput, symbol: 'L_0' },
    measuredStraight: { ...straightInput, symbol: 'S_0' },
    offset: offsetInput,
  },
  outputs: {
    lap: {
      symbol: 'L',
      label: 'one lap at the measuring line',
      kind: 'distance',
      tex: '@measuredLap',
    },
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
      tex: '\\frac{@lap - 2 \\cdot @straight}{2\\pi} - @offset',
    },
  },
  sources: ['geometry', 'agco-19-04', 'pa-58-185-131'],
  compute: ({ measuredLap, measuredStraight, offset }) => {
    const radius = radiusFrom(measuredLap, measuredStraight, offset)
    const known = { lap: measuredLap, straight: measuredStraight }
    return {
      ...known,
      radius:
        radius > 0 ? radius : refuse('the two straights are longer than the lap leaves room for'),
    }
  },
})
