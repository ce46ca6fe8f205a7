import { calculation } from '../calculation.ts'
import {
  crossFallStraightsInput,
  crossFallTurnsInput,
  widthStraightsInput,
  widthTurnsInput,
} from './oval-inputs.ts'

/** How much higher the outside edge lies than the rail. */
export const edgeRise = calculation({
  id: 'edge-rise',
  title: 'Outside edge above the rail',
  about:
    'What a level on a tripod should read between the rail and the outside edge. The width is taken as level; taped along the slope it is longer by less than one and a half percent.',
  inputs: {
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
    crossFallStraights: crossFallStraightsInput,
    crossFallTurns: crossFallTurnsInput,
  },
  outputs: {
    straights: {
      symbol: 'h_s',
      label: 'outside edge above the rail on the straights',
      kind: 'distance',
      tex: '@crossFallStraights \\cdot @widthStraights',
    },
    turns: {
      symbol: 'h_t',
      label: 'outside edge above the rail on the turns',
      kind: 'distance',
      tex: '@crossFallTurns \\cdot @widthTurns',
    },
  },
  sources: ['geometry'],
  compute: (x) => ({
    straights: x.crossFallStraights * x.widthStraights,
    turns: x.crossFallTurns * x.widthTurns,
  }),
})
