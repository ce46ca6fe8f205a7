import type { InputSpec } from '../calculation.ts'

/**
 * Inputs that most calculations on an oval share. Ranges reach from an athletics track to the
 * largest ovals raced on.
 */
export const straightInput: InputSpec = {
  symbol: 'S',
  label: 'length of one straight',
  kind: 'distance',
  range: [0, 1500],
  howTo: 'Tape along the rail from the end of one turn to the start of the next.',
}

export const radiusInput: InputSpec = {
  symbol: 'R',
  label: 'turn radius at the rail',
  kind: 'distance',
  range: [5, 800],
  howTo: 'Half the distance between the rails of the two straights.',
}

export const lapInput: InputSpec = {
  symbol: 'L',
  label: 'one lap at the measuring line',
  kind: 'distance',
  range: [100, 4000],
  howTo: "Read it from the surveyor's certificate.",
}

export const offsetInput: InputSpec = {
  symbol: 'o',
  label: 'distance from the rail at which a lap is measured',
  kind: 'distance',
  range: [0, 5],
  howTo: 'A rule of racing; ask the racing authority.',
}

export const widthStraightsInput: InputSpec = {
  symbol: 'W_s',
  label: 'track width on the straights',
  kind: 'width',
  range: [0.5, 60],
  howTo: 'Tape square across from the rail to the outside edge at three places; take the mean.',
}

export const widthTurnsInput: InputSpec = {
  ...widthStraightsInput,
  symbol: 'W_t',
  label: 'track width on the turns',
}

export const crossFallStraightsInput: InputSpec = {
  symbol: 'e_s',
  label: 'cross-fall on the straights',
  kind: 'fineShare',
  range: [0.002, 0.08],
  howTo: "Set a level board square across the track; fall over the board's length.",
}

export const crossFallTurnsInput: InputSpec = {
  ...crossFallStraightsInput,
  symbol: 'e_t',
  label: 'cross-fall on the turns',
  range: [0.002, 0.16],
}

export const railLengthInput: InputSpec = {
  symbol: 'L_r',
  label: 'length of the rail',
  kind: 'distance',
  range: [100, 4000],
  howTo: 'Two straights and two turns, along the rail.',
}

export const areaInput: InputSpec = {
  symbol: 'A',
  label: 'area of the track',
  kind: 'area',
  range: [1, 300_000],
  howTo: 'Length by width; on turns, along the middle of the track.',
}
