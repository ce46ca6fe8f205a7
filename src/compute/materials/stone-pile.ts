import { calculation } from '../calculation.ts'
import { looseWeightInput } from '../cushion/cushion-inputs.ts'
import { conePile, windrowPile } from './pile.ts'

/** How large an order of stone lies: as one round heap, or as a long one of a given width. */
export const stonePile = calculation({
  id: 'pile',
  sources: ['geometry'],
  inputs: {
    mass: { symbol: 'm', kind: 'mass', range: [50, 1e7] },
    weight: looseWeightInput,
    repose: { symbol: '\\varphi', kind: 'angle', range: [0.2, 1.2] },
    width: { symbol: 'b', kind: 'width', range: [1, 40] },
  },
  outputs: {
    volume: { symbol: 'V', kind: 'fillVolume', tex: '\\frac{@mass}{@weight}' },
    across: {
      symbol: 'D',
      kind: 'width',
      tex: '\\left(\\frac{24\\,@volume}{\\pi \\tan(@repose)}\\right)^{1/3}',
      round: 'up',
    },
    height: { symbol: 'h', kind: 'width', tex: '\\frac{@across \\tan(@repose)}{2}' },
    length: {
      symbol: 'l',
      kind: 'width',
      tex: '@width + \\max\\left(0,\\,\\frac{4\\,@volume}{@width \\cdot @width \\tan(@repose)} - \\frac{\\pi\\,@width}{6}\\right)',
      round: 'up',
    },
  },
  compute: ({ mass, weight, repose, width }) => {
    const volume = mass / weight
    // All heaps of a material have one shape.
    const across = Math.cbrt(volume / conePile(1, repose).volume)
    const ends = windrowPile(width, 0, repose)
    const eachMeter = windrowPile(width, 1, repose).volume - ends.volume
    const ridge = Math.max(0, (volume - ends.volume) / eachMeter)
    return { volume, across, height: conePile(across, repose).height, length: width + ridge }
  },
})
