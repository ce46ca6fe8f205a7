import { calculation } from '../../calculation.ts'
import { radiusInput, straightInput } from '../oval-inputs.ts'

/** The oval that lies closest to the walked line, against the shape in the facility file. */
export const fittedShape = calculation({
  id: 'fitted-shape',
  title: 'The shape by the walked line',
  about:
    'Two straights and two half circles are laid through the points of the line so that the squares of their distances from it are least. A large distance at one place is a bent rail, a bad point, or a turn that is no half circle.',
  sources: ['geometry'],
  inputs: {
    straightFitted: {
      ...straightInput,
      symbol: 'S_w',
      label: 'straight of the oval laid through the line',
    },
    radiusFitted: {
      ...radiusInput,
      symbol: 'R_w',
      label: 'turn radius of the oval laid through the line',
    },
    walked: {
      symbol: 'o_w',
      label: 'how far outside the rail the line was walked',
      kind: 'width',
      range: [-5, 20],
    },
    worst: {
      symbol: 'r_{max}',
      label: 'largest distance of a point from it',
      kind: 'width',
      range: [0, 200],
    },
    straight: straightInput,
    radius: radiusInput,
  },
  outputs: {
    straight: {
      symbol: '\\Delta S',
      label: 'longer than the straight in the file (shorter when below zero)',
      kind: 'distance',
      tex: '@straightFitted - @straight',
    },
    radius: {
      symbol: '\\Delta R',
      label: 'larger than the radius in the file (smaller when below zero)',
      kind: 'distance',
      tex: '@radiusFitted - @walked - @radius',
    },
    worst: {
      symbol: 'r',
      label: 'at the worst point off a true oval',
      kind: 'width',
      tex: '@worst',
    },
  },
  compute: (x) => ({
    straight: x.straightFitted - x.straight,
    radius: x.radiusFitted - x.walked - x.radius,
    worst: x.worst,
  }),
})
