import { calculation, type Refusal, refuse } from '../calculation.ts'
import { looseWeightInput, packedWeightInput } from '../cushion/cushion-inputs.ts'
import { wholeUp } from '../whole-up.ts'

/** Material, lifts, water and hand work for a washout that is cut square and filled. */
export const squareCut = calculation({
  id: 'square-cut',
  title: 'Mending a washout cut square',
  about:
    'The edges are cut square to full depth, and the hole is filled in lifts with material like the base, damp, each lift packed. A washout is a V; filled as a V its edges taper to nothing, and the share given here is thinner than what holds, which is why the edges are cut square. Water is for dry fill; damp fill takes less. Deeper than the crew may mend: the base is gone, and that is work for a licensed engineer.',
  inputs: {
    width: {
      symbol: 'w',
      label: 'width of the cut',
      kind: 'smallWidth',
      range: [0.05, 10],
      howTo: 'Measure at the surface, to firm ground on both sides.',
    },
    depth: {
      symbol: 'D',
      label: 'depth of the cut',
      kind: 'depth',
      range: [0.01, 0.4],
      howTo: 'Measure at the deepest place, below a straightedge.',
    },
    length: {
      symbol: '\\ell',
      label: 'length of the cut',
      kind: 'width',
      range: [0.2, 100],
      howTo: 'Tape along the washout.',
    },
    packedWeight: packedWeightInput,
    looseWeight: looseWeightInput,
    lift: {
      symbol: 't_l',
      label: 'loose lift',
      kind: 'depth',
      range: [0.02, 0.2],
      howTo: 'Rake the lift level; push a ruler through it.',
    },
    moisture: {
      symbol: 'u',
      label: 'wanted moisture, by dry weight',
      kind: 'fineShare',
      range: [0, 0.4],
      howTo: 'A squeezed handful holds, and breaks into a few pieces when dropped.',
    },
    barrow: {
      symbol: 'V_b',
      label: 'load of a barrow',
      kind: 'patchVolume',
      range: [0.02, 0.3],
      howTo: 'Count shovels, or read the plate.',
    },
    thin: {
      symbol: 'z',
      label: 'thinnest fill that holds',
      kind: 'depth',
      range: [0.005, 0.2],
      howTo: 'A rule of the trade; change it when your own records say so.',
    },
    people: {
      symbol: 'N',
      label: 'people at work',
      kind: 'count',
      range: [0, 100],
      howTo: 'Count them.',
    },
    labor: {
      symbol: 'r',
      label: 'work of one person for each part of a patch',
      kind: 'laborRate',
      range: [5000, 700_000],
      howTo: 'Time a patch; hours by people, over its packed volume.',
    },
  },
  outputs: {
    volume: {
      symbol: 'V',
      label: 'packed fill',
      kind: 'patchVolume',
      tex: '@width \\cdot @depth \\cdot @length',
    },
    mass: {
      symbol: 'M',
      label: 'dry mass of the fill',
      kind: 'patchMass',
      tex: '@volume \\cdot @packedWeight',
    },
    loose: {
      symbol: 'V_l',
      label: 'loose fill to bring',
      kind: 'patchVolume',
      tex: '\\frac{@mass}{@looseWeight}',
    },
    lifts: {
      symbol: 'n_l',
      label: 'lifts',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@depth \\cdot @packedWeight}{@lift \\cdot @looseWeight} \\right\\rceil',
    },
    water: {
      symbol: 'V_w',
      label: 'water for dry fill',
      kind: 'smallWater',
      tex: '\\frac{@mass \\cdot @moisture}{\\rho_{\\text{water}}}',
    },
    barrows: {
      symbol: 'n_b',
      label: 'barrows of loose fill',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@loose}{@barrow} \\right\\rceil',
    },
    'thin-share': {
      symbol: 'q',
      label: 'share of the width that would be too thin if filled as a V',
      kind: 'share',
      tex: '\\frac{@thin}{@depth}',
    },
    time: {
      symbol: 't',
      label: 'time for the crew',
      kind: 'duration',
      tex: '\\frac{@volume \\cdot @labor}{@people}',
    },
  },
  sources: ['geometry', 'common-practice'],
  compute: (x) => {
    const volume = x.width * x.depth * x.length
    const mass = volume * x.packedWeight
    const loose = mass / x.looseWeight
    const share: number | Refusal =
      x.thin < x.depth ? x.thin / x.depth : refuse('all of such a fill would be too thin to hold')
    return {
      volume,
      mass,
      loose,
      lifts: wholeUp((x.depth * x.packedWeight) / (x.lift * x.looseWeight)),
      water: (mass * x.moisture) / 1000,
      barrows: wholeUp(loose / x.barrow),
      'thin-share': share,
      time: x.people > 0 ? (volume * x.labor) / x.people : refuse('nobody is there to do it'),
    }
  },
})
