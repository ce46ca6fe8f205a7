import { calculation, refuse } from '../calculation.ts'
import { looseWeightInput, packedWeightInput } from '../cushion/cushion-inputs.ts'
import { wholeUp } from '../whole-up.ts'

/** Material, lifts, water and hand work for a washout that is cut square and filled. */
export const squareCut = calculation({
  id: 'square-cut',
  inputs: {
    width: { symbol: 'w', kind: 'smallWidth', range: [0.05, 10] },
    depth: { symbol: 'D', kind: 'depth', range: [0.01, 0.4] },
    length: { symbol: '\\ell', kind: 'width', range: [0.2, 100] },
    packedWeight: packedWeightInput,
    looseWeight: looseWeightInput,
    lift: { symbol: 't_l', kind: 'depth', range: [0.02, 0.2] },
    moisture: { symbol: 'u', kind: 'fineShare', range: [0, 0.4] },
    barrow: { symbol: 'V_b', kind: 'patchVolume', range: [0.02, 0.3] },
    thin: { symbol: 'z', kind: 'depth', range: [0.005, 0.2] },
    people: { symbol: 'N', kind: 'count', range: [0, 100] },
    labor: { symbol: 'r', kind: 'laborRate', range: [5000, 700_000] },
  },
  outputs: {
    volume: { symbol: 'V', kind: 'patchVolume', tex: '@width \\cdot @depth \\cdot @length' },
    mass: { symbol: 'M', kind: 'patchMass', tex: '@volume \\cdot @packedWeight' },
    loose: {
      symbol: 'V_l',
      kind: 'patchVolume',
      tex: '\\frac{@mass}{@looseWeight}',
      round: 'up',
    },
    lifts: {
      symbol: 'n_l',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@depth \\cdot @packedWeight}{@lift \\cdot @looseWeight} \\right\\rceil',
    },
    water: {
      symbol: 'V_w',
      kind: 'smallWater',
      tex: '\\frac{@mass \\cdot @moisture}{\\rho_{\\text{water}}}',
    },
    barrows: {
      symbol: 'n_b',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@loose}{@barrow} \\right\\rceil',
    },
    'thin-share': { symbol: 'q', kind: 'share', tex: '\\frac{@thin}{@depth}' },
    time: { symbol: 't', kind: 'duration', tex: '\\frac{@volume \\cdot @labor}{@people}' },
  },
  sources: ['geometry', 'common-practice'],
  terms: ['water'],
  refusals: ['fill-too-thin', 'nobody-there'],
  compute: (x) => {
    const volume = x.width * x.depth * x.length
    const mass = volume * x.packedWeight
    const loose = mass / x.looseWeight
    const share = x.thin < x.depth ? x.thin / x.depth : refuse('fill-too-thin')
    return {
      volume,
      mass,
      loose,
      lifts: wholeUp((x.depth * x.packedWeight) / (x.lift * x.looseWeight)),
      water: (mass * x.moisture) / 1000,
      barrows: wholeUp(loose / x.barrow),
      'thin-share': share,
      time: x.people > 0 ? (volume * x.labor) / x.people : refuse('nobody-there'),
    }
  },
})
