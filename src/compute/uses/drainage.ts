import { sheetFlow } from '../drainage/sheet-flow.ts'
import { fact, figure, fixed, type Use, use } from './use.ts'

/** Rain that runs to the rail of a sealed straight and of a sealed turn. */
export const drainageUses = (): readonly Use[] => [
  use('drain', sheetFlow, {
    length: fact('oval.width.straights'),
    slope: fact('oval.cross-fall.straights'),
    hourRain: fact('practice.hour-rain'),
    burstShare: fact('practice.burst-share'),
    roughness: fixed(0.011, 'bare-ground'),
    runoff: fixed(0.9, 'sealed-surface'),
    rail: fact('oval.station-spacing'),
    widthTurns: fact('oval.width.turns'),
    radius: figure('shape.radius'),
  }),
]
