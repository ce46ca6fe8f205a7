import type { InputSpec } from '../calculation.ts'

/** Inputs that calculations on the cushion share. */
export const depthTargetInput: InputSpec = {
  symbol: 'd',
  label: 'wanted depth of the cushion',
  kind: 'depth',
  range: [0, 0.4],
  howTo: 'Settle it on a day when the track rides well, and write it down.',
}

export const depthFoundInput: InputSpec = {
  symbol: 'd_f',
  label: 'depth of the cushion found',
  kind: 'depth',
  range: [0, 0.4],
  howTo: 'Push a ruler through the cushion to the base at the survey points; take the mean.',
}

export const workedWeightInput: InputSpec = {
  symbol: '\\rho_w',
  label: 'dry unit weight of the harrowed cushion',
  kind: 'unitWeight',
  range: [500, 2800],
  howTo: 'Lift the cushion from a square foot, dry it, weigh it, and divide by its volume.',
}

export const looseWeightInput: InputSpec = {
  symbol: '\\rho_l',
  label: 'unit weight of loose material',
  kind: 'unitWeight',
  range: [500, 2800],
  howTo: 'Weigh a level bucket of known volume as it comes off the truck, or ask the quarry.',
}

export const packedWeightInput: InputSpec = {
  symbol: '\\rho_c',
  label: 'dry unit weight when packed',
  kind: 'unitWeight',
  range: [800, 2900],
  howTo: 'Ask a soils laboratory for a density test of a packed spot.',
}

export const truckLoadInput: InputSpec = {
  symbol: 'm_1',
  label: 'load of one truck',
  kind: 'mass',
  range: [50, 60_000],
  howTo: 'Read a weigh ticket.',
}

export const materialPriceInput: InputSpec = {
  symbol: 'p',
  label: 'price of cushion material, delivered',
  kind: 'massPrice',
  range: [0, 1],
  howTo: 'Ask the quarry for a delivered price.',
}
