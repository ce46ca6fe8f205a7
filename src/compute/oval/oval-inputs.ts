import type { InputSpec } from '../calculation.ts'

/**
 * Inputs that most calculations on an oval share. Ranges reach from an athletics track to the
 * largest ovals raced on.
 */
export const straightInput: InputSpec = { symbol: 'S', kind: 'distance', range: [0, 1500] }

export const radiusInput: InputSpec = { symbol: 'R', kind: 'distance', range: [5, 800] }

export const lapInput: InputSpec = { symbol: 'L', kind: 'distance', range: [100, 4000] }

export const offsetInput: InputSpec = { symbol: 'o', kind: 'distance', range: [0, 5] }

export const widthStraightsInput: InputSpec = { symbol: 'W_s', kind: 'width', range: [0.5, 60] }

export const widthTurnsInput: InputSpec = {
  ...widthStraightsInput,
  symbol: 'W_t',
}

export const crossFallStraightsInput: InputSpec = {
  symbol: 'e_s',
  kind: 'fineShare',
  range: [0.002, 0.08],
}

export const crossFallTurnsInput: InputSpec = {
  ...crossFallStraightsInput,
  symbol: 'e_t',
  range: [0.002, 0.16],
}

export const railLengthInput: InputSpec = { symbol: 'L_r', kind: 'distance', range: [100, 4000] }

export const areaInput: InputSpec = { symbol: 'A', kind: 'area', range: [1, 300_000] }
