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
  inputs: {
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
    crossFallStraights: crossFallStraightsInput,
    crossFallTurns: crossFallTurnsInput,
  },
  outputs: {
    straights: {
      symbol: 'h_s',
      kind: 'distance',
      tex: '@crossFallStraights \\cdot @widthStraights',
    },
    turns: { symbol: 'h_t', kind: 'distance', tex: '@crossFallTurns \\cdot @widthTurns' },
  },
  sources: ['geometry'],
  compute: (x) => ({
    straights: x.crossFallStraights * x.widthStraights,
    turns: x.crossFallTurns * x.widthTurns,
  }),
})
