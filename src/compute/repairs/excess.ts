import { calculation, type OutputSpec, refuse } from '../calculation.ts'
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

const outputs = {
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
  loads: { symbol: 'n', kind: 'whole', tex: '\\left\\lceil \\frac{@hauled}{@load} \\right\\rceil' },
  loading: {
    symbol: 't_2',
    kind: 'duration',
    tex: '\\left\\lceil \\frac{@heap}{@bucket} \\right\\rceil \\frac{@bucketTime}{@loaders}',
  },
  time: { symbol: 't', kind: 'duration', tex: '@grading + @loading' },
} as const satisfies Readonly<Record<string, OutputSpec>>

/** A cushion that is too deep: what must come off, and what moving it takes. */
export const excess = calculation({
  id: 'excess',
  inputs: {
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
    bucket: { symbol: 'V_1', kind: 'patchVolume', range: [0.02, 9] },
    bucketTime: { symbol: 't_1', kind: 'minutes', range: [20, 1800] },
    loaders: { symbol: 'N', kind: 'count', range: [1, 20] },
  },
  outputs,
  sources: ['geometry', 'common-practice'],
  refusals: ['no-excess'],
  compute: (x) => {
    const over = x.found - x.target
    if (!(over > 0)) {
      const none = refuse('no-excess')
      return Object.fromEntries(Object.keys(outputs).map((name) => [name, none])) as Record<
        keyof typeof outputs,
        typeof none
      >
    }
    const volume = x.area * over
    const mass = volume * x.worked
    const hauled = asWeighed(mass, x.moisture)
    const heap = mass / x.looseWeight
    const loading = (wholeUp(heap / x.bucket) * x.bucketTime) / x.loaders
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
  },
})
