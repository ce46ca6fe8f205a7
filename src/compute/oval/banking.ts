import { calculation } from '../calculation.ts'
import { balancedSpeed, unbalancedPush } from './curve-balance.ts'
import { crossFallTurnsInput, offsetInput, radiusInput } from './oval-inputs.ts'

/** Speed that a banked turn balances, and the sideways push that is left at race pace. */
export const banking = calculation({
  id: 'banking',
  title: 'Balance of a banked turn',
  about:
    'For information only: a horse is no vehicle, and these numbers promise no grip. At the balanced speed the bank alone carries a body around the turn; at race pace the footing must give the rest, as a share of the weight. Changing a bank is work for a licensed engineer.',
  inputs: {
    radius: radiusInput,
    offset: offsetInput,
    crossFall: crossFallTurnsInput,
    pace: {
      symbol: 'v',
      label: 'speed of horses in a race',
      kind: 'speed',
      range: [2, 25],
      howTo: 'Distance of a race over its time, from the program.',
    },
  },
  outputs: {
    'balanced-speed': {
      symbol: 'v_0',
      label: 'speed that the bank balances',
      kind: 'speed',
      tex: '\\sqrt{g\\,(@radius + @offset) \\cdot @crossFall}',
    },
    'side-force': {
      symbol: 'f',
      label: 'share of the weight left for the footing to hold at race pace',
      kind: 'ratio',
      tex: '\\frac{(@pace)^2}{g\\,(@radius + @offset)} - @crossFall',
    },
  },
  sources: ['openstax-physics', 'aashto-green-book'],
  compute: ({ radius, offset, crossFall, pace }) => ({
    'balanced-speed': balancedSpeed(crossFall, radius + offset),
    'side-force': unbalancedPush(pace, radius + offset, crossFall),
  }),
})
