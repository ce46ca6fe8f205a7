import { calculation } from '../calculation.ts'
import { radiusInput, straightInput, widthStraightsInput, widthTurnsInput } from './oval-inputs.ts'

/** Area of the racing strip, seen from above. */
export const trackArea = calculation({
  id: 'track-area',
  title: 'Area of the track',
  about:
    'Seen from above, from the rail to the outside edge. On a banked turn the surface itself is larger, but by less than one percent up to a cross-fall of 14 %. Tapers, chutes and crossings are not counted.',
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
  },
  outputs: {
    straights: {
      symbol: 'A_s',
      label: 'both straights',
      kind: 'area',
      tex: '2 \\cdot @straight \\cdot @widthStraights',
    },
    turns: {
      symbol: 'A_t',
      label: 'both turns',
      kind: 'area',
      tex: '\\pi \\cdot @widthTurns\\,(2 \\cdot @radius + @widthTurns)',
    },
    total: { symbol: 'A', label: 'whole track', kind: 'area', tex: '@straights + @turns' },
    acres: { symbol: 'A', label: 'whole track', kind: 'land', tex: '@straights + @turns' },
  },
  sources: ['geometry'],
  compute: ({ straight, radius, widthStraights, widthTurns }) => {
    const straights = 2 * straight * widthStraights
    const turns = Math.PI * widthTurns * (2 * radius + widthTurns)
    return { straights, turns, total: straights + turns, acres: straights + turns }
  },
})
