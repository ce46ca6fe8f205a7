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
  swell: {
    symbol: 's',
    label: 'share by which cut base swells when loose',
    kind: 'share',
    range: [0, 1],
    howTo:
      'Cut a square of base to a known depth, rake it level over the same square, measure its depth.',
  },
} as const satisfies Readonly<Record<string, InputSpec>>

const outputs = {
  missing: {
    symbol: '\\Delta d',
    label: 'depth missing',
    kind: 'fineDepth',
    tex: '@target - @found',
  },
  mass: {
    symbol: 'M',
    label: 'material to add, dry',
    kind: 'mass',
    tex: '@area \\cdot @missing \\cdot @unitWeight',
  },
  loads: {
    symbol: 'n',
    label: 'truckloads',
    kind: 'whole',
    tex: '\\left\\lceil \\frac{@mass}{@load} \\right\\rceil',
  },
  cost: { symbol: 'K', label: 'price of the material', kind: 'money', tex: '@mass \\cdot @price' },
  cut: {
    symbol: 'd_c',
    label: 'depth of base to cut so that it swells into what is missing',
    kind: 'fineDepth',
    tex: '\\frac{@missing}{1 + @swell}',
  },
} as const satisfies Readonly<Record<string, OutputSpec>>

const about =
  'Two ways to soften a hard track: bring material for the missing depth, or cut the base so that what is loosened swells into it. Cut base is lost to the base: after rain a cushion won that way packs and washes, and the base is thinner for good. The mass is dry; a weigh ticket counts water too.'

type Answers = Record<keyof typeof outputs, number | Refusal>

const answers = (
  x: Readonly<Record<keyof typeof inputs, number>>,
  costOf: (mass: number) => number | Refusal,
): Answers => {
  const missing = x.target - x.found
  if (!(missing > 0)) {
    const none = refuse('no depth is missing')
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
  title: 'A cushion that is too thin',
  about,
  inputs: { ...inputs, price: materialPriceInput },
  outputs,
  sources: ['geometry'],
  compute: (x) => answers(x, (mass) => mass * x.price),
})

/** The same where nobody has asked for a price. */
export const missingDepthUnpriced = calculation({
  id: 'missing-depth-unpriced',
  title: missingDepth.title,
  about,
  inputs,
  outputs: { ...outputs, cost: { ...outputs.cost, tex: '@mass \\cdot p' } },
  sources: ['geometry'],
  compute: (x) => answers(x, () => refuse('price of cushion material is not known')),
})
