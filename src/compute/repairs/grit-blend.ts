import { calculation, refuse } from '../calculation.ts'
import { asWeighed, carriedMoisture, orderOf } from '../cushion/as-weighed.ts'
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
    moisture: carriedMoisture,
    load: truckLoadInput,
  },
  outputs: {
    add: {
      symbol: 'M_s',
      kind: 'mass',
      tex: '@cushion\\,\\frac{@target - @found}{@stone - @target}',
    },
    order: orderOf('add'),
    loads: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@order}{@load} \\right\\rceil',
    },
  },
  sources: ['geometry'],
  refusals: ['grit-enough', 'stone-too-fine'],
  compute: ({ cushion, found, target, stone, moisture, load }) => {
    const reason = found >= target ? 'grit-enough' : stone <= target ? 'stone-too-fine' : undefined
    if (reason !== undefined) {
      const no = refuse(reason)
      return { add: no, order: no, loads: no }
    }
    const add = (cushion * (target - found)) / (stone - target)
    const order = asWeighed(add, moisture)
    return { add, order, loads: wholeUp(order / load) }
  },
})
