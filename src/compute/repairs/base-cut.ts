import { calculation } from '../calculation.ts'

/**
 * Depth of base (m) that swells into a wanted depth of cushion when it is cut loose: d/(1 + swell).
 */
export const baseCut = calculation({
  id: 'base-cut',
  title: 'How deep to cut the base for more cushion',
  about:
    'Packed base swells when it is cut loose, so a shallower cut gives the wanted depth. The base is thinner by the cut ever after, and a cushion cut this way is fine only until it rains.',
  sources: ['fm-5-434', 'common-practice'],
  inputs: {
    gain: { symbol: 'd', label: 'cushion to gain', kind: 'fineDepth', range: [0.001, 0.1] },
    swell: {
      symbol: 's',
      label: 'share by which cut base swells',
      kind: 'share',
      range: [0.01, 0.6],
    },
  },
  outputs: {
    cut: {
      symbol: 'c',
      label: 'to cut into the base',
      kind: 'fineDepth',
      tex: '\\frac{@gain}{1 + @swell}',
    },
  },
  compute: (x) => ({ cut: x.gain / (1 + x.swell) }),
})
