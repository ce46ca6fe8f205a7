import type { InputSpec } from '../calculation.ts'

/** Inputs of every kind of driving over the track. */
export const speedInput: InputSpec = { symbol: 'v', kind: 'speed', range: [0.2, 15] }

export const efficiencyInput: InputSpec = { symbol: 'E', kind: 'share', range: [0.1, 1] }

export const machinesInput: InputSpec = { symbol: 'N', kind: 'count', range: [1, 20] }

export const passesInput: InputSpec = { symbol: 'P', kind: 'whole', range: [1, 20] }
