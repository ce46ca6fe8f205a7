import {
  calculation,
  type InputSpec,
  type OutputSpec,
  type Refusal,
  refuse,
} from '../calculation.ts'
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
  load: truckLoadInput,
  swell: { symbol: 's', kind: 'share', range: [0, 1] },
} as const satisfies Readonly<Record<string, InputSpec>>

const outputs = {
  missing: { symbol: '\\Delta d', kind: 'fineDepth', tex: '@target - @found' },
  mass: { symbol: 'M', kind: 'mass', tex: '@area \\cdot @missing \\cdot @unitWeight' },
  loads: { symbol: 'n', kind: 'whole', tex: '\\left\\lceil \\frac{@mass}{@load} \\right\\rceil' },
  cost: { symbol: 'K', kind: 'money', tex: '@mass \\cdot @price' },
  cut: { symbol: 'd_c', kind: 'fineDepth', tex: '\\frac{@missing}{1 + @swell}' },
} as const satisfies Readonly<Record<string, OutputSpec>>

const answers = <Unpriced extends string = never>(
  x: Readonly<Record<keyof typeof inputs, number>>,
  costOf: (mass: number) => number | Refusal<Unpriced>,
): Record<keyof typeof outputs, number | Refusal<'no-depth-missing' | Unpriced>> => {
  const missing = x.target - x.found
  if (!(missing > 0)) {
    const none = refuse('no-depth-missing')
    return { missing: none, mass: none, loads: none, cost: none, cut: none }
  }
  const mass = x.area * missing * x.unitWeight
  return {
    missing,
    mass,
    loads: wholeUp(mass / x.load),
    cost: costOf(mass),
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
  compute: (x) => answers(x, (mass) => mass * x.price),
})

/** The same where nobody has asked for a price. */
export const missingDepthUnpriced = calculation({
  id: 'missing-depth-unpriced',
  inputs,
  outputs: { ...outputs, cost: { ...outputs.cost, tex: '@mass \\cdot p' } },
  sources: ['geometry'],
  refusals: ['no-depth-missing', 'no-material-price'],
  compute: (x) => answers(x, () => refuse('no-material-price')),
})
