import {
  calculation,
  type InputSpec,
  type OutputSpec,
  type Refusal,
  refuse,
} from '../calculation.ts'
import { asWeighed, carriedMoisture } from '../cushion/as-weighed.ts'
import {
  depthFoundInput,
  depthTargetInput,
  looseWeightInput,
  truckLoadInput,
  workedWeightInput,
} from '../cushion/cushion-inputs.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { wholeUp } from '../whole-up.ts'

const inputs = {
  area: areaInput,
  found: depthFoundInput,
  target: depthTargetInput,
  worked: workedWeightInput,
  looseWeight: looseWeightInput,
  edge: { symbol: 'L_o', kind: 'distance', range: [50, 5000] },
  repose: { symbol: '\\varphi', kind: 'angle', range: [0.3, 0.95] },
  moisture: carriedMoisture,
  load: truckLoadInput,
  grading: { symbol: 't_g', kind: 'duration', range: [0, 864_000] },
} as const satisfies Readonly<Record<string, InputSpec>>

const outputsWith = <Loading extends string>(loading: Loading) =>
  ({
    excess: { symbol: '\\Delta d', kind: 'fineDepth', tex: '@found - @target' },
    volume: { symbol: 'V', kind: 'fillVolume', tex: '@area \\cdot @excess' },
    mass: { symbol: 'M', kind: 'mass', tex: '@volume \\cdot @worked' },
    heap: { symbol: 'V_l', kind: 'fillVolume', tex: '\\frac{@mass}{@looseWeight}' },
    'windrow-height': {
      symbol: 'h',
      kind: 'depth',
      tex: '\\sqrt{\\frac{@heap}{@edge}\\tan(@repose)}',
    },
    hauled: { symbol: 'M_h', kind: 'mass', tex: '@mass \\cdot (1 + @moisture)', round: 'up' },
    loads: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@hauled}{@load} \\right\\rceil',
    },
    loading: { symbol: 't_2', kind: 'duration', tex: loading },
    time: { symbol: 't', kind: 'duration', tex: '@grading + @loading' },
  }) as const satisfies Readonly<Record<string, OutputSpec>>

type Name = keyof ReturnType<typeof outputsWith>

/** What must come off; `loadingOf` says how long loading its loose volume and weight takes, s. */
function takenOff(
  x: Readonly<Record<keyof typeof inputs, number>>,
  loadingOf: (heap: number, hauled: number) => number,
): Readonly<Record<Name, number | Refusal<'no-excess'>>> {
  const over = x.found - x.target
  if (!(over > 0)) {
    const none = refuse('no-excess')
    return Object.fromEntries(Object.keys(outputsWith('')).map((name) => [name, none])) as Record<
      Name,
      typeof none
    >
  }
  const volume = x.area * over
  const mass = volume * x.worked
  const hauled = asWeighed(mass, x.moisture)
  const heap = mass / x.looseWeight
  const loading = loadingOf(heap, hauled)
  return {
    excess: over,
    volume,
    mass,
    heap,
    'windrow-height': Math.sqrt((heap / x.edge) * Math.tan(x.repose)),
    hauled,
    loads: wholeUp(hauled / x.load),
    loading,
    time: x.grading + loading,
  }
}

/** A cushion that is too deep: what must come off, and what moving it takes with rented trucks. */
export const excess = calculation({
  id: 'excess',
  inputs: {
    ...inputs,
    bucket: { symbol: 'V_1', kind: 'patchVolume', range: [0.02, 9] },
    bucketTime: { symbol: 't_1', kind: 'minutes', range: [20, 1800] },
    loaders: { symbol: 'N', kind: 'count', range: [1, 20] },
  },
  outputs: outputsWith(
    '\\left\\lceil \\frac{@heap}{@bucket} \\right\\rceil \\frac{@bucketTime}{@loaders}',
  ),
  sources: ['geometry', 'common-practice'],
  refusals: ['no-excess'],
  compute: (x) => takenOff(x, (heap) => (wholeUp(heap / x.bucket) * x.bucketTime) / x.loaders),
})

/** The same with the loader and the trucks that are here, of which the slower sets the pace. */
export const excessHauled = calculation({
  id: 'excess-hauled',
  inputs: { ...inputs, rate: { symbol: 'q', kind: 'massRate', range: [0.001, 500] } },
  outputs: outputsWith('\\frac{@hauled}{@rate}'),
  sources: ['geometry', 'fm-5-434', 'common-practice'],
  refusals: ['no-excess'],
  compute: (x) => takenOff(x, (_, hauled) => hauled / x.rate),
})
