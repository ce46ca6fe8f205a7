import { calculation, type OutputSpec, type Refusal, refuse } from '../calculation.ts'
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
  excess: {
    symbol: '\\Delta d',
    label: 'depth too much',
    kind: 'fineDepth',
    tex: '@found - @target',
  },
  volume: {
    symbol: 'V',
    label: 'cushion to take off',
    kind: 'fillVolume',
    tex: '@area \\cdot @excess',
  },
  mass: { symbol: 'M', label: 'dry mass to take off', kind: 'mass', tex: '@volume \\cdot @worked' },
  heap: {
    symbol: 'V_l',
    label: 'loose volume to load',
    kind: 'fillVolume',
    tex: '\\frac{@mass}{@looseWeight}',
  },
  'windrow-height': {
    symbol: 'h',
    label: 'height of one windrow along the outside edge',
    kind: 'depth',
    tex: '\\sqrt{\\frac{@heap}{@edge}\\tan(@repose)}',
  },
  loads: {
    symbol: 'n',
    label: 'truckloads',
    kind: 'whole',
    tex: '\\left\\lceil \\frac{@mass}{@load} \\right\\rceil',
  },
  time: {
    symbol: 't',
    label: 'time to blade it off and load it',
    kind: 'duration',
    tex: '@grading + \\left\\lceil \\frac{@heap}{@bucket} \\right\\rceil \\frac{@bucketTime}{@loaders}',
  },
} as const satisfies Readonly<Record<string, OutputSpec>>

/** A cushion that is too deep: what must come off, and what moving it takes. */
export const excess = calculation({
  id: 'excess',
  title: 'A cushion that is too deep',
  about:
    'What lies above the wanted depth, bladed to the outside edge and loaded from there. The windrow is a triangle in section that stands at its own slope all along the outside edge. The time counts one grading of the whole width and the loader; it takes for granted that there are trucks enough to keep the loader busy.',
  inputs: {
    area: areaInput,
    found: depthFoundInput,
    target: depthTargetInput,
    worked: workedWeightInput,
    looseWeight: looseWeightInput,
    edge: {
      symbol: 'L_o',
      label: 'length of the windrow',
      kind: 'distance',
      range: [50, 5000],
      howTo: 'Once around the outside edge.',
    },
    repose: {
      symbol: '\\varphi',
      label: 'slope at which loose material stands',
      kind: 'angle',
      range: [0.3, 0.95],
      howTo: 'Lay a level and a ruler against a heap.',
    },
    load: truckLoadInput,
    grading: {
      symbol: 't_g',
      label: 'time to grade the whole width',
      kind: 'duration',
      range: [0, 864_000],
      howTo: 'Time it once with the machines here.',
    },
    bucket: {
      symbol: 'V_1',
      label: 'bucket of the loader',
      kind: 'patchVolume',
      range: [0.02, 9],
      howTo: 'Read the plate.',
    },
    bucketTime: {
      symbol: 't_1',
      label: 'time for one bucket',
      kind: 'minutes',
      range: [20, 1800],
      howTo: 'Time ten buckets, divide by ten.',
    },
    loaders: { symbol: 'N', label: 'loaders', kind: 'count', range: [1, 20], howTo: 'Count them.' },
  },
  outputs,
  sources: ['geometry', 'common-practice'],
  compute: (x) => {
    const over = x.found - x.target
    if (!(over > 0)) {
      const none = refuse('the cushion is no deeper than wanted')
      return Object.fromEntries(Object.keys(outputs).map((name) => [name, none])) as Record<
        keyof typeof outputs,
        Refusal
      >
    }
    const volume = x.area * over
    const mass = volume * x.worked
    const heap = mass / x.looseWeight
    return {
      excess: over,
      volume,
      mass,
      heap,
      'windrow-height': Math.sqrt((heap / x.edge) * Math.tan(x.repose)),
      loads: wholeUp(mass / x.load),
      time: x.grading + (wholeUp(heap / x.bucket) * x.bucketTime) / x.loaders,
    }
  },
})
