import { calculation } from '../calculation.ts'
import { radiusInput, straightInput } from './oval-inputs.ts'
import { pylonCount } from './pylon-count.ts'

/** How many pylons mark the inside of the oval, closer to each other in the turns. */
export const pylons = calculation({
  id: 'pylon-count',
  sources: ['in-71-iac-4', 'geometry'],
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    turns: { symbol: 'a_t', kind: 'width', range: [1, 60] },
    straights: { symbol: 'a_s', kind: 'width', range: [1, 60] },
  },
  outputs: {
    count: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{2\\pi\\,@radius}{@turns} \\right\\rceil + \\left\\lceil \\frac{2\\,@straight}{@straights} \\right\\rceil',
    },
  },
  compute: (x) => ({ count: pylonCount(x.straight, x.radius, x.turns, x.straights) }),
})
