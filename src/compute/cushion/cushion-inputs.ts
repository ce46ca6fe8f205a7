import type { InputSpec } from '../calculation.ts'

/** Inputs that calculations on the cushion share. */
export const depthTargetInput: InputSpec = { symbol: 'd', kind: 'depth', range: [0, 0.4] }

export const depthFoundInput: InputSpec = { symbol: 'd_f', kind: 'depth', range: [0, 0.4] }

export const workedWeightInput: InputSpec = {
  symbol: '\\rho_w',
  kind: 'unitWeight',
  range: [500, 2800],
}

export const looseWeightInput: InputSpec = {
  symbol: '\\rho_l',
  kind: 'unitWeight',
  range: [500, 2800],
}

export const packedWeightInput: InputSpec = {
  symbol: '\\rho_c',
  kind: 'unitWeight',
  range: [800, 2900],
}

export const truckLoadInput: InputSpec = { symbol: 'm_1', kind: 'mass', range: [50, 60_000] }

export const materialPriceInput: InputSpec = { symbol: 'p', kind: 'massPrice', range: [0, 1] }
