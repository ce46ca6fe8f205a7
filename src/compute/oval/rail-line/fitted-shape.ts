import { calculation } from '../../calculation.ts'
import { radiusInput, straightInput } from '../oval-inputs.ts'

/** The oval that lies closest to the walked line, against the shape in the facility file. */
export const fittedShape = calculation({
  id: 'fitted-shape',
  sources: ['geometry'],
  inputs: {
    straightFitted: {
      ...straightInput,
      symbol: 'S_w',
    },
    radiusFitted: {
      ...radiusInput,
      symbol: 'R_w',
    },
    walked: { symbol: 'o_w', kind: 'width', range: [-5, 20] },
    worst: { symbol: 'r_{max}', kind: 'width', range: [0, 200] },
    straight: straightInput,
    radius: radiusInput,
  },
  outputs: {
    straight: { symbol: '\\Delta S', kind: 'distance', tex: '@straightFitted - @straight' },
    radius: { symbol: '\\Delta R', kind: 'distance', tex: '@radiusFitted - @walked - @radius' },
    worst: { symbol: 'r', kind: 'width', tex: '@worst' },
  },
  compute: (x) => ({
    straight: x.straightFitted - x.straight,
    radius: x.radiusFitted - x.walked - x.radius,
    worst: x.worst,
  }),
})
