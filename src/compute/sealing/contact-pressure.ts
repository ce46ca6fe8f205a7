import { calculation } from '../calculation.ts'
import { GRAVITY } from '../oval/curve-balance.ts'

/** How hard a truck tire and a drum press on the surface. */
export const contactPressure = calculation({
  id: 'contact-pressure',
  inputs: {
    inflation: { symbol: 'p_i', kind: 'pressure', range: [20_000, 1_100_000] },
    mass: { symbol: 'm', kind: 'machineMass', range: [40, 60_000] },
    share: { symbol: 'k', kind: 'share', range: [0.2, 1] },
    width: { symbol: 'w', kind: 'width', range: [0.3, 20] },
    contact: { symbol: 'c', kind: 'smallWidth', range: [0.01, 0.5] },
  },
  outputs: {
    tire: { symbol: 'p_t', kind: 'pressure', tex: '@inflation' },
    drum: {
      symbol: 'p_d',
      kind: 'pressure',
      tex: '\\frac{@share \\cdot @mass \\cdot g}{@width \\cdot @contact}',
    },
    ratio: { symbol: 'r', kind: 'ratio', tex: '\\frac{@tire}{@drum}' },
  },
  sources: ['common-practice'],
  compute: ({ inflation, mass, share, width, contact }) => {
    const drum = (share * mass * GRAVITY) / (width * contact)
    return { tire: inflation, drum, ratio: inflation / drum }
  },
})
