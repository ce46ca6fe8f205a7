import { calculation } from '../calculation.ts'
import { balancedSpeed, unbalancedPush } from './curve-balance.ts'
import { crossFallTurnsInput, offsetInput, radiusInput } from './oval-inputs.ts'

/** Speed that a banked turn balances, and the sideways push that is left at race pace. */
export const banking = calculation({
  id: 'banking',
  inputs: {
    radius: radiusInput,
    offset: offsetInput,
    crossFall: crossFallTurnsInput,
    pace: { symbol: 'v', kind: 'speed', range: [2, 25] },
  },
  outputs: {
    'balanced-speed': {
      symbol: 'v_0',
      kind: 'speed',
      tex: '\\sqrt{g\\,(@radius + @offset) \\cdot @crossFall}',
    },
    'side-force': {
      symbol: 'f',
      kind: 'ratio',
      tex: '\\frac{(@pace)^2}{g\\,(@radius + @offset)} - @crossFall',
    },
  },
  sources: ['openstax-physics', 'aashto-green-book'],
  refusals: ['bank-outdoes-turn'],
  compute: ({ radius, offset, crossFall, pace }) => ({
    'balanced-speed': balancedSpeed(crossFall, radius + offset),
    'side-force': unbalancedPush(pace, radius + offset, crossFall),
  }),
})
