import { calculation } from '../calculation.ts'

/** Fresh water, kg/m³. */
const water = 1000

/**
 * The laboratory's highest dry weight and best moisture, found without the coarse grains, for the
 * material as it lies with them. The standard goes to 40 % of grains left on a No. 4 sieve.
 */
export const oversize = calculation({
  id: 'oversize',
  sources: ['astm-d4718'],
  inputs: {
    highest: { symbol: '\\rho_F', kind: 'unitWeight', range: [1000, 2800] },
    best: { symbol: 'w_F', kind: 'fineShare', range: [0, 0.4] },
    coarse: { symbol: 'P_C', kind: 'share', range: [0, 0.4] },
    gravity: { symbol: 'G_M', kind: 'ratio', range: [2, 3.5] },
    moisture: { symbol: 'w_C', kind: 'fineShare', range: [0, 0.15] },
  },
  outputs: {
    highest: {
      symbol: '\\rho_T',
      kind: 'unitWeight',
      tex: '\\frac{@highest\\,@gravity\\,\\rho_{water}}{@highest\\,@coarse + @gravity\\,\\rho_{water}\\,(1 - @coarse)}',
    },
    best: {
      symbol: 'w_T',
      kind: 'fineShare',
      tex: '@moisture\\,@coarse + @best\\,(1 - @coarse)',
    },
  },
  compute: (x) => {
    const stone = x.gravity * water
    return {
      highest: (x.highest * stone) / (x.highest * x.coarse + stone * (1 - x.coarse)),
      best: x.moisture * x.coarse + x.best * (1 - x.coarse),
    }
  },
})
