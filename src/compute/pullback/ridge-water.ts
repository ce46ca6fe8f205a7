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
  height: {
    symbol: 'h',
    label: 'height of the ridge at the rail',
    kind: 'fineDepth',
    range: [0, 0.25],
    howTo:
      'Lay a straightedge level from the ridge toward the outside; measure down to the surface one foot out.',
  },
  straight: straightInput,
  radius: radiusInput,
  crossFallStraights: crossFallStraightsInput,
  crossFallTurns: crossFallTurnsInput,
  widthStraights: widthStraightsInput,
} as const satisfies Readonly<Record<string, InputSpec>>

export const ridgeOutputs = {
  taken: {
    symbol: 'h_r',
    label: 'height of ridge that is reckoned with',
    kind: 'fineDepth',
    tex: '@height',
  },
  'dam-width': {
    symbol: 'w_d',
    label: 'width of the water that the ridge holds back on the straights',
    kind: 'width',
    tex: '\\frac{@height}{@crossFallStraights}',
  },
  'dam-volume': {
    symbol: 'V',
    label: 'water held back around the oval',
    kind: 'waterVolume',
    tex: '\\tfrac{1}{2} \\cdot (@height)^2 \\left(\\frac{2 \\cdot @straight}{@crossFallStraights} + \\frac{2\\pi \\cdot @radius}{@crossFallTurns}\\right)',
  },
} as const satisfies Readonly<Record<string, OutputSpec>>

export const ridgeAbout =
  'A ridge at the rail is a dam: water stands behind it as a wedge, as deep as the ridge is high, until it runs over or a gap is opened. It reaches farthest out where the track is flattest. The volume is that of a full wedge along an unbroken ridge.'

/** Width and volume of the wedge of water behind a ridge. */
export function damOf(x: Readonly<Record<keyof typeof ridgeInputs, number>>): {
  taken: number
  'dam-width': number | Refusal
  'dam-volume': number | Refusal
} {
  const width = x.height / x.crossFallStraights
  if (width > x.widthStraights) {
    const over = refuse('water behind that ridge would reach the outside edge')
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
  title: 'A ridge at the rail',
  about: ridgeAbout,
  inputs: ridgeInputs,
  outputs: ridgeOutputs,
  sources: ['geometry'],
  compute: damOf,
})
