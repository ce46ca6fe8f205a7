import type { InputSpec } from '../calculation.ts'

/** Inputs of every kind of driving over the track. */
export const speedInput: InputSpec = {
  symbol: 'v',
  label: 'working speed',
  kind: 'speed',
  range: [0.2, 15],
  howTo: 'Time it over 88 ft: 60 divided by the seconds is miles an hour.',
}

export const efficiencyInput: InputSpec = {
  symbol: 'E',
  label: 'share of the time that it really works',
  kind: 'share',
  range: [0.1, 1],
  howTo: 'Time a whole job, and the part of it spent working.',
}

export const machinesInput: InputSpec = {
  symbol: 'N',
  label: 'machines at work together',
  kind: 'count',
  range: [1, 20],
  howTo: 'Count them.',
}

export const passesInput: InputSpec = {
  symbol: 'P',
  label: 'passes over the same strip',
  kind: 'whole',
  range: [1, 20],
  howTo: 'Count on a day when the result was right.',
}
