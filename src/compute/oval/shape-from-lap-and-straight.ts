import { radiusFrom } from '../../model/oval-shape.ts'
import { calculation, refuse } from '../calculation.ts'
import { lapInput, offsetInput, straightInput } from './oval-inputs.ts'

/** The oval of a certified lap and a taped straight: what is left of the lap is one full circle. */
export const shapeFromLapAndStraight = calculation({
  id: 'shape-from-lap-and-straight',
  inputs: {
    measuredLap: { ...lapInput, symbol: 'L_0' },
    measuredStraight: { ...straightInput, symbol: 'S_0' },
    offset: offsetInput,
  },
  outputs: {
    lap: { symbol: 'L', kind: 'distance', tex: '@measuredLap' },
    straight: { symbol: 'S', kind: 'distance', tex: '@measuredStraight' },
    radius: {
      symbol: 'R',
      kind: 'distance',
      tex: '\\frac{@lap - 2 \\cdot @straight}{2\\pi} - @offset',
    },
  },
  sources: ['geometry', 'agco-19-04', 'pa-58-185-131'],
  refusals: ['straights-too-long'],
  compute: ({ measuredLap, measuredStraight, offset }) => {
    const radius = radiusFrom(measuredLap, measuredStraight, offset)
    const known = { lap: measuredLap, straight: measuredStraight }
    return {
      ...known,
      radius: radius > 0 ? radius : refuse('straights-too-long'),
    }
  },
})
