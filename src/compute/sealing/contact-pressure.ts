import { calculation } from '../calculation.ts'
import { GRAVITY } from '../oval/curve-balance.ts'

/** How hard a truck tire and a drum press on the surface. */
export const contactPressure = calculation({
  id: 'contact-pressure',
  title: 'Pressure of a tire against a drum',
  about:
    'A tire presses on the ground about as hard as the air inside it, whatever the truck weighs; its stiff side walls add a little that is left out here. A drum spreads its weight along its whole width, over a stripe as long as it dents the surface. The stripe is an estimate: a softer surface makes it longer and the pressure lower.',
  inputs: {
    inflation: {
      symbol: 'p_i',
      label: 'tire pressure',
      kind: 'pressure',
      range: [20_000, 1_100_000],
      howTo: 'Read it with a gauge.',
    },
    mass: {
      symbol: 'm',
      label: 'mass of the roller',
      kind: 'machineMass',
      range: [40, 60_000],
      howTo: 'Read the plate.',
    },
    share: {
      symbol: 'k',
      label: 'share of it that stands on one drum',
      kind: 'share',
      range: [0.2, 1],
      howTo: 'Read the plate.',
    },
    width: {
      symbol: 'w',
      label: 'width of the drum',
      kind: 'width',
      range: [0.3, 20],
      howTo: 'Measure the drum.',
    },
    contact: {
      symbol: 'c',
      label: 'length of the stripe that the drum touches',
      kind: 'smallWidth',
      range: [0.01, 0.5],
      howTo: 'Stop the roller on fresh powder, roll back, and measure the flattened stripe.',
    },
  },
  outputs: {
    tire: { symbol: 'p_t', label: 'pressure under a tire', kind: 'pressure', tex: '@inflation' },
    drum: {
      symbol: 'p_d',
      label: 'pressure under a drum',
      kind: 'pressure',
      tex: '\\frac{@share \\cdot @mass \\cdot g}{@width \\cdot @contact}',
    },
    ratio: {
      symbol: 'r',
      label: 'a tire presses harder by this factor',
      kind: 'ratio',
      tex: '\\frac{@tire}{@drum}',
    },
  },
  sources: ['common-practice'],
  compute: ({ inflation, mass, share, width, contact }) => {
    const drum = (share * mass * GRAVITY) / (width * contact)
    return { tire: inflation, drum, ratio: inflation / drum }
  },
})
