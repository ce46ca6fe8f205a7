import { calculation, refuse } from '../calculation.ts'
import { damOf, ridgeAbout, ridgeInputs, ridgeOutputs, ridgeWater } from './ridge-water.ts'

/** What a ridge at the rail does to water and to the harrow that rides on it. */
export const ridge = calculation({
  id: 'ridge',
  title: ridgeWater.title,
  about: `${ridgeAbout} A harrow drawn along the rail rides on the ridge with its inside end and tilts as one stiff piece about its outside end, so that its teeth reach less and less deep toward the rail; for one that is hinged in sections, put in the width of a section.`,
  inputs: {
    ...ridgeInputs,
    harrowWidth: {
      symbol: 'w',
      label: 'width of the harrow, or of one hinged section',
      kind: 'width',
      range: [0.3, 20],
      howTo: 'Measure the part that works the ground.',
    },
    teeth: {
      symbol: 't',
      label: 'tooth depth',
      kind: 'depth',
      range: [0.003, 0.12],
      howTo: 'Set the harrow on a hard floor; measure the teeth below the runners.',
    },
    print: {
      symbol: 'q',
      label: 'depth of a usual hoof print',
      kind: 'fineDepth',
      range: [0.001, 0.1],
      howTo: 'Lay a straightedge over a print; measure down with a ruler.',
    },
  },
  outputs: {
    ...ridgeOutputs,
    'lift-width': {
      symbol: 'x',
      label: 'how far out from the rail such prints are left',
      kind: 'width',
      tex: '@harrowWidth \\left(1 - \\frac{@teeth - @print}{@height}\\right)',
    },
  },
  sources: ['geometry', 'common-practice'],
  compute: (x) => {
    const out = x.harrowWidth * (1 - (x.teeth - x.print) / x.height)
    const lift =
      x.print > x.teeth
        ? refuse('prints of that depth are deeper than the teeth reach even without a ridge')
        : !(out > 1e-6)
          ? refuse('the ridge is too low to lift the teeth clear of prints of that depth')
          : out
    return { ...damOf(x), 'lift-width': lift }
  },
})
