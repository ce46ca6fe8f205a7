import { lapLength } from '../../model/oval-shape.ts'
import { calculation } from '../calculation.ts'
import { radiusInput, straightInput, widthTurnsInput } from './oval-inputs.ts'

/** Length of the outside edge once around. */
export const outsideLength = calculation({
  id: 'outside-length',
  inputs: { straight: straightInput, radius: radiusInput, widthTurns: widthTurnsInput },
  outputs: {
    length: {
      symbol: 'L_o',
      kind: 'distance',
      tex: '2 \\cdot @straight + 2\\pi(@radius + @widthTurns)',
    },
  },
  sources: ['geometry'],
  compute: ({ straight, radius, widthTurns }) => ({
    length: lapLength(straight, radius, widthTurns),
  }),
})
