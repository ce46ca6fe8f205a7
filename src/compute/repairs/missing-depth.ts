import {
  calculation,
  type InputSpec,
  type OutputSpec,
  type Refusal,
  refuse,
} from '../calculation.ts'
import { asWeighed, carriedMoisture, orderOf } from '../cushion/as-weighed.ts'
import {
  depthFoundInput,
  depthTargetInput,
  materialPriceInput,
  truckLoadInput,
  workedWeightInput,
} from '../cushion/cushion-inputs.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { wholeUp } from '../whole-up.ts'

const inputs = {
  area: areaInput,
  target: depthTargetInput,
  found: depthFoundInput,
  unitWeight: workedWeightInput,
  moisture: carriedMoisture,
  load: truckLoadInput,
  swell: { symbol: 's', kind: 'share', range: [0, 1] },
} as const satisfies Readonly<Record<string, InputSpec>>

const outputs = {
  missing: { symbol: '\\Delta d', kind: 'fineDepth', tex: '@target - @found' },
  mass: { symbol: 'M', kind: 'mass', tex: '@area \\cdot @missing \\cdot @unitWeight' },
  order: orderOf('mass'),
  loads: { symbol: 'n', kind: 'whole', tex: '\\left\\lceil \\frac{@order}{@load} \\right\\rceil' },
  cost: { symbol: 'K', kind: 'money', tex: '@order \\cdot @price', round: 'up' },
  cut: { symbol: 'd_c', kind: 'fineDepth', tex: '\\frac{@missing}{1 + @swell}' },
} as const satisfies Readonly<Record<string, OutputSpec>>

const answers = <Unpriced extends string = never>(
  x: Readonly<Record<keyof typeof inputs, number>>,
  costOf: (order: number) => number | Refusal<Unpriced>,
): Record<keyof typeof outputs, number | Refusal<'no-depth-missing' | Unpriced>> => {
  const missing = x.target - x.found
  if (!(missing > 0)) {
    const none = refuse('no-depth-missing')
    return { missing: none, mass: none, order: none, loads: none, cost: none, cut: none }
  }
  const mass = x.area * missing * x.unitWeight
  const order = asWeighed(mass, x.moisture)
  return {
    missing,
    mass,
    order,
    loads: wholeUp(order / x.load),
    cost: costOf(order),
    cut: missing / (1 + x.swell),
  }
}

/** A cushion that is too thin or too hard: what to bring, or what to cut. */
export const missingDepth = calculation({
  id: 'missing-depth',
  inputs: { ...inputs, price: materialPriceInput },
  outputs,
  sources: ['geometry'],
  refusals: ['no-depth-missing'],
  compute: (x) => answers(x, (order) => order * x.price),
})

/** The same where nobody has asked for a price. */
export const missingDepthUnpriced = calculation({
  id: 'missing-depth-unpriced',
  inputs,
  outputs: { ...outputs, cost: { ...outputs.cost, tex: '@order \\cdot p' } },
  sources: ['geometry'],
  refusals: ['no-depth-missing', 'no-material-price'],
  compute: (x) => answers(x, () => refuse('no-material-price')),
})
