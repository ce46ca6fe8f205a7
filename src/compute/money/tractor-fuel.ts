import { calculation } from '../calculation.ts'
import { fuelUse, YEARLY_MEAN } from './fuel.ts'

/** Diesel of a tractor whose use nobody has measured, from its power. */
export const tractorFuel = calculation({
  id: 'fuel',
  sources: ['asae-ep496'],
  inputs: {
    power: { symbol: 'P', kind: 'power', range: [3000, 400_000], formulaUnit: 'hp' },
  },
  outputs: {
    rate: { symbol: 'f', kind: 'fuelRate', tex: '0.044 \\cdot @power\\,\\text{gal/h}' },
  },
  compute: ({ power }) => ({ rate: fuelUse(power, YEARLY_MEAN) }),
})
