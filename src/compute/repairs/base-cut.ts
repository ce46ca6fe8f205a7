import { calculation } from '../calculation.ts'

/**
 * Depth of base (m) that swells into a wanted depth of cushion when it is cut loose: d/(1 + swell).
 */
export const baseCut = calculation({
  id: 'base-cut',
  sources: ['fm-5-434', 'common-practice'],
  inputs: {
    gain: { symbol: 'd', kind: 'fineDepth', range: [0.001, 0.1] },
    swell: { symbol: 's', kind: 'share', range: [0.01, 0.6] },
  },
  outputs: {
    cut: { symbol: 'c', kind: 'fineDepth', tex: '\\frac{@gain}{1 + @swell}' },
  },
  compute: (x) => ({ cut: x.gain / (1 + x.swell) }),
})
