import { calculation } from '../calculation.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { depthTargetInput, workedWeightInput } from './cushion-inputs.ts'

/** Volume and dry mass of the whole cushion. */
export const cushionMass = calculation({
  id: 'cushion-mass',
  inputs: { area: areaInput, depth: depthTargetInput, unitWeight: workedWeightInput },
  outputs: {
    volume: { symbol: 'V', kind: 'fillVolume', tex: '@area \\cdot @depth' },
    mass: { symbol: 'M', kind: 'mass', tex: '@volume \\cdot @unitWeight' },
  },
  sources: ['geometry'],
  compute: ({ area, depth, unitWeight }) => ({
    volume: area * depth,
    mass: area * depth * unitWeight,
  }),
})
