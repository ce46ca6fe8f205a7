import type { InputSpec } from '../calculation.ts'

/** Inputs that calculations on a rained-on layer share. */
export const solidsInput: InputSpec = {
  symbol: '\\rho_g',
  kind: 'unitWeight',
  range: [2300, 3300],
}

export const fillInput = (symbol: string): InputSpec => ({
  symbol,
  kind: 'share',
  range: [0.5, 1],
})

export const waterInput = (symbol: string): InputSpec => ({
  symbol,
  kind: 'waterDepth',
  range: [0, 0.05],
})

export const drawInput = (symbol: string): InputSpec => ({
  symbol,
  kind: 'ratio',
  range: [0.9, 1.4],
})
