import { calculation, refuse } from '../calculation.ts'
import { truckLoadInput } from '../cushion/cushion-inputs.ts'
import { wholeUp } from '../whole-up.ts'

/** Coarse stone that brings the grit of a cushion back to its share. */
export const gritBlend = calculation({
  id: 'grit-blend',
  title: 'Coarse stone to bring back the grit',
  about:
    'Traffic crushes grit to powder. This is the mass of coarse stone which, mixed evenly through the whole cushion, brings its coarse share back. The cushion becomes deeper by what is added: where it is at its depth already, take the same mass of powder off first, and count again.',
  inputs: {
    cushion: {
      symbol: 'M',
      label: 'dry mass of the cushion',
      kind: 'mass',
      range: [1, 1e8],
      howTo: 'Area by depth by unit weight.',
    },
    found: {
      symbol: 'g_f',
      label: 'share of coarse grit found, by weight',
      kind: 'share',
      range: [0, 0.99],
      howTo: 'Wash and dry a sample, shake it through a sieve of the grit size, weigh what stays.',
    },
    target: {
      symbol: 'g',
      label: 'wanted share of coarse grit, by weight',
      kind: 'share',
      range: [0.001, 0.99],
      howTo: 'Sieve a sample from a day when the track holds well in the wet.',
    },
    stone: {
      symbol: 'g_s',
      label: 'coarse share of the stone that is added',
      kind: 'share',
      range: [0.01, 1],
      howTo: 'Ask the quarry for its sieve analysis.',
    },
    load: truckLoadInput,
  },
  outputs: {
    add: {
      symbol: 'M_s',
      label: 'coarse stone to add, dry',
      kind: 'mass',
      tex: '@cushion\\,\\frac{@target - @found}{@stone - @target}',
    },
    loads: {
      symbol: 'n',
      label: 'truckloads',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@add}{@load} \\right\\rceil',
    },
  },
  sources: ['geometry'],
  compute: ({ cushion, found, target, stone, load }) => {
    const reason =
      found >= target
        ? 'the cushion holds its share of grit'
        : stone <= target
          ? 'that stone is no coarser than the cushion ought to be'
          : undefined
    if (reason !== undefined) return { add: refuse(reason), loads: refuse(reason) }
    const add = (cushion * (target - found)) / (stone - target)
    return { add, loads: wholeUp(add / load) }
  },
})
