import {
  calculation,
  type InputSpec,
  type OutputSpec,
  type Refusal,
  refuse,
} from '../calculation.ts'
import {
  crossFallStraightsInput,
  crossFallTurnsInput,
  radiusInput,
  straightInput,
  widthStraightsInput,
} from '../oval/oval-inputs.ts'

/** Inputs of the water that stands behind a ridge. */
export const ridgeInputs = {
  height: { symbol: 'h', kind: 'fineDepth', range: [0, 0.25] },
  straight: straightInput,
  radius: radiusInput,
  crossFallStraights: crossFallStraightsInput,
  crossFallTurns: crossFallTurnsInput,
  widthStraights: widthStraightsInput,
} as const satisfies Readonly<Record<string, InputSpec>>

export const ridgeOutputs = {
  taken: { symbol: 'h_r', kind: 'fineDepth', tex: '@height' },
  'dam-width': { symbol: 'w_d', kind: 'width', tex: '\\frac{@height}{@crossFallStraights}' },
  'dam-volume': {
    symbol: 'V',
    kind: 'waterVolume',
    tex: '\\tfrac{1}{2} \\cdot (@height)^2 \\left(\\frac{2 \\cdot @straight}{@crossFallStraights} + \\frac{2\\pi \\cdot @radius}{@crossFallTurns}\\right)',
  },
} as const satisfies Readonly<Record<string, OutputSpec>>

/** Width and volume of the wedge of water behind a ridge. */
export function damOf(x: Readonly<Record<keyof typeof ridgeInputs, number>>): {
  taken: number
  'dam-width': number | Refusal<'water-over-edge'>
  'dam-volume': number | Refusal<'water-over-edge'>
} {
  const width = x.height / x.crossFallStraights
  if (width > x.widthStraights) {
    const over = refuse('water-over-edge')
    return { taken: x.height, 'dam-width': over, 'dam-volume': over }
  }
  const volume =
    0.5 *
    x.height ** 2 *
    ((2 * x.straight) / x.crossFallStraights + (2 * Math.PI * x.radius) / x.crossFallTurns)
  return { taken: x.height, 'dam-width': width, 'dam-volume': volume }
}

/** What a ridge at the rail does to water. */
export const ridgeWater = calculation({
  id: 'ridge-water',
  inputs: ridgeInputs,
  outputs: ridgeOutputs,
  sources: ['geometry'],
  refusals: ['water-over-edge'],
  compute: damOf,
})
