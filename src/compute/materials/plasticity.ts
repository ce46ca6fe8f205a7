import { calculation, refuse } from '../calculation.ts'

/** How far a clay can be worked between stiff and liquid, and where its moisture stands between. */
export const plasticity = calculation({
  id: 'plasticity',
  sources: ['astm-d4318'],
  inputs: {
    liquid: { symbol: 'w_L', kind: 'fineShare', range: [0.05, 2] },
    plastic: { symbol: 'w_P', kind: 'fineShare', range: [0.03, 1] },
    moisture: { symbol: 'w', kind: 'fineShare', range: [0, 2] },
  },
  outputs: {
    index: { symbol: 'I_P', kind: 'fineShare', tex: '@liquid - @plastic' },
    liquidity: {
      symbol: 'I_L',
      kind: 'ratio',
      tex: '\\frac{@moisture - @plastic}{@index}',
    },
  },
  refusals: ['not-plastic'],
  compute: ({ liquid, plastic, moisture }) => {
    const index = liquid - plastic
    const no = refuse('not-plastic')
    return index > 0
      ? { index, liquidity: (moisture - plastic) / index }
      : { index: no, liquidity: no }
  },
})
