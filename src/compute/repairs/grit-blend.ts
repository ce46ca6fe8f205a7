import { calculation, refuse } from '../calculation.ts'
import { truckLoadInput } from '../cushion/cushion-inputs.ts'
import { wholeUp } from '../whole-up.ts'

/** Coarse stone that brings the grit of a cushion back to its share. */
export const gritBlend = calculation({
  id: 'grit-blend',
  inputs: {
    cushion: { symbol: 'M', kind: 'mass', range: [1, 1e8] },
    found: { symbol: 'g_f', kind: 'share', range: [0, 0.99] },
    target: { symbol: 'g', kind: 'share', range: [0.001, 0.99] },
    stone: { symbol: 'g_s', kind: 'share', range: [0.01, 1] },
    load: truckLoadInput,
  },
  outputs: {
    add: {
      symbol: 'M_s',
      kind: 'mass',
      tex: '@cushion\\,\\frac{@target - @found}{@stone - @target}',
    },
    loads: { symbol: 'n', kind: 'whole', tex: '\\left\\lceil \\frac{@add}{@load} \\right\\rceil' },
  },
  sources: ['geometry'],
  refusals: ['grit-enough', 'stone-too-fine'],
  compute: ({ cushion, found, target, stone, load }) => {
    const reason = found >= target ? 'grit-enough' : stone <= target ? 'stone-too-fine' : undefined
    if (reason !== undefined) return { add: refuse(reason), loads: refuse(reason) }
    const add = (cushion * (target - found)) / (stone - target)
    return { add, loads: wholeUp(add / load) }
  },
})
