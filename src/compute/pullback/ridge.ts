import { calculation, refuse } from '../calculation.ts'
import { damOf, ridgeInputs, ridgeOutputs } from './ridge-water.ts'

/** What a ridge at the rail does to water and to the harrow that rides on it. */
export const ridge = calculation({
  id: 'ridge',
  inputs: {
    ...ridgeInputs,
    harrowWidth: { symbol: 'w', kind: 'width', range: [0.3, 20] },
    teeth: { symbol: 't', kind: 'depth', range: [0.003, 0.12] },
    print: { symbol: 'q', kind: 'fineDepth', range: [0.001, 0.1] },
  },
  outputs: {
    ...ridgeOutputs,
    'lift-width': {
      symbol: 'x',
      kind: 'width',
      tex: '@harrowWidth \\left(1 - \\frac{@teeth - @print}{@height}\\right)',
    },
  },
  sources: ['geometry', 'common-practice'],
  refusals: ['water-over-edge', 'prints-below-teeth', 'ridge-too-low'],
  compute: (x) => {
    const out = x.harrowWidth * (1 - (x.teeth - x.print) / x.height)
    const lift =
      x.print > x.teeth
        ? refuse('prints-below-teeth')
        : !(out > 1e-6)
          ? refuse('ridge-too-low')
          : out
    return { ...damOf(x), 'lift-width': lift }
  },
})
