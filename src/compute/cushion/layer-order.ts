import { calculation, type InputSpec, type OutputSpec, refuse } from '../calculation.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { wholeUp } from '../whole-up.ts'
import { asWeighed, carriedMoisture, orderOf } from './as-weighed.ts'
import { materialPriceInput, truckLoadInput, workedWeightInput } from './cushion-inputs.ts'

const inputs = {
  area: areaInput,
  depth: { symbol: 'd', kind: 'depth', range: [0.001, 0.3] },
  unitWeight: workedWeightInput,
  moisture: carriedMoisture,
  load: truckLoadInput,
} as const satisfies Readonly<Record<string, InputSpec>>

const outputs = {
  step: { symbol: 'd_s', kind: 'fineDepth', tex: '@depth' },
  mass: { symbol: 'M', kind: 'mass', tex: '@area \\cdot @depth \\cdot @unitWeight' },
  order: orderOf('mass'),
  loads: { symbol: 'n', kind: 'whole', tex: '\\left\\lceil \\frac{@order}{@load} \\right\\rceil' },
} as const satisfies Readonly<Record<string, OutputSpec>>

const cost: OutputSpec = { symbol: 'K', kind: 'money', tex: '@order \\cdot @price', round: 'up' }

const amounts = (
  x: Readonly<Record<keyof typeof inputs, number>>,
): { step: number; mass: number; order: number; loads: number } => {
  const mass = x.area * x.depth * x.unitWeight
  const order = asWeighed(mass, x.moisture)
  return { step: x.depth, mass, order, loads: wholeUp(order / x.load) }
}

/** Mass, truckloads and price of a layer over the whole track. */
export const layerOrder = calculation({
  id: 'layer-order',
  inputs: { ...inputs, price: materialPriceInput },
  outputs: { ...outputs, cost },
  sources: ['geometry'],
  compute: (x) => ({ ...amounts(x), cost: amounts(x).order * x.price }),
})

/** The same where nobody has asked for a price. */
export const layerOrderUnpriced = calculation({
  id: 'layer-order-unpriced',
  inputs,
  outputs: { ...outputs, cost: { ...cost, tex: '@order \\cdot p' } },
  sources: ['geometry'],
  refusals: ['no-material-price'],
  compute: (x) => ({ ...amounts(x), cost: refuse('no-material-price') }),
})
