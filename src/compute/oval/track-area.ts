import { straightsArea, turnsArea } from '../../model/oval-shape.ts'
import { calculation } from '../calculation.ts'
import { radiusInput, straightInput, widthStraightsInput, widthTurnsInput } from './oval-inputs.ts'

/** Area of the racing strip, seen from above. */
export const trackArea = calculation({
  id: 'track-area',
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
  },
  outputs: {
    straights: { symbol: 'A_s', kind: 'area', tex: '2 \\cdot @straight \\cdot @widthStraights' },
    turns: {
      symbol: 'A_t',
      kind: 'area',
      tex: '\\pi \\cdot @widthTurns\\,(2 \\cdot @radius + @widthTurns)',
    },
    total: { symbol: 'A', kind: 'area', tex: '@straights + @turns' },
    acres: { symbol: 'A', kind: 'land', tex: '@straights + @turns' },
  },
  sources: ['geometry'],
  compute: ({ straight, radius, widthStraights, widthTurns }) => {
    const straights = straightsArea(straight, widthStraights)
    const turns = turnsArea(radius, widthTurns)
    return { straights, turns, total: straights + turns, acres: straights + turns }
  },
})
