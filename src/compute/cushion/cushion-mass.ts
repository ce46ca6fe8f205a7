import { calculation } from '../calculation.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { depthTargetInput, workedWeightInput } from './cushion-inputs.ts'

/** Volume and dry mass of the whole cushion. */
export const cushionMass = calculation({
  id: 'cushion-mass',
  title: 'The cushion as a whole',
  about:
    'All of the cushion at its wanted depth, as it lies after harrowing. The mass is dry: what a truck scale shows includes the water in the material.',
  inputs: { area: areaInput, depth: depthTargetInput, unitWeight: workedWeightInput },
  outputs: {
    volume: {
      symbol: 'V',
      label: 'volume of the cushion',
      kind: 'fillVolume',
      tex: '@area \\cdot @depth',
    },
    mass: {
      symbol: 'M',
      label: 'dry mass of the cushion',
      kind: 'mass',
      tex: '@volume \\cdot @unitWeight',
    },
  },
  sources: ['geometry'],
  compute: ({ area, depth, unitWeight }) => ({
    volume: area * depth,
    mass: area * depth * unitWeight,
  }),
})
