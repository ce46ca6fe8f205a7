import { calculation, refuse } from '../calculation.ts'
import { GRAVITY, sidePush } from '../oval/curve-balance.ts'
import { crossFallTurnsInput, offsetInput, radiusInput } from '../oval/oval-inputs.ts'
import { slopePull } from '../survey/slope.ts'
import { waterDensity } from '../water/moisture.ts'

/**
 * Sideways pull on a water truck on a banked turn, as shares of its weight, and how much of its
 * stability that uses. Down the bank pulls sin(arctan e); driving around the turn gives back v² ÷
 * (g r), turned into the plane of the bank.
 */
export const truckOnBank = calculation({
  id: 'truck-on-bank',
  title: 'A water truck on the banked turn',
  about:
    'A bank pulls a truck sideways with a share of its weight even while it stands. Tank trucks have been measured to turn over when the sideways pull reached little more than a third of their weight. What the bank uses is gone before the truck swerves, drops a wheel off a soft edge or sloshes its water. Driving around the turn at walking pace gives back next to nothing; steering up the bank, away from the rail, adds to the pull, and more with every bit of speed. A truck may be tested less stable than the usual value here; its owner may know.',
  sources: ['nrc-tank-trucks', 'openstax-physics', 'geometry'],
  inputs: {
    tank: {
      symbol: 'T',
      label: 'tank',
      kind: 'waterVolume',
      range: [0.05, 60],
      howTo: 'Read the plate, or time filling at a known flow.',
    },
    crossFall: crossFallTurnsInput,
    threshold: {
      symbol: 'r',
      label: 'sideways pull at which a tank truck may turn over, as a share of its weight',
      kind: 'share',
      range: [0.15, 0.8],
      howTo: 'Ask the maker or the owner; without an answer take the usual value.',
    },
    radius: radiusInput,
    offset: offsetInput,
    pace: {
      symbol: 'v',
      label: 'speed of the truck',
      kind: 'speed',
      range: [0.2, 14],
      howTo: 'Time it over a measured length.',
    },
  },
  outputs: {
    water: {
      symbol: 'M',
      label: 'of water in a full tank',
      kind: 'machineMass',
      tex: '\\rho_{\\text{water}}\\,@tank',
    },
    pull: {
      symbol: 's',
      label: 'of its weight pulls the truck down the bank',
      kind: 'fineShare',
      tex: '\\sin(\\arctan(@crossFall))',
    },
    used: {
      symbol: 'p',
      label: 'of what tips it over is used up standing still',
      kind: 'share',
      tex: '\\frac{@pull}{@threshold}',
      round: 'up',
    },
    moving: {
      symbol: 'p_v',
      label: 'of what tips it over is used up at its usual speed',
      kind: 'share',
      tex: '\\frac{@pull - \\frac{(@pace)^2}{g\\,(@radius + @offset)} \\cdot \\cos(\\arctan(@crossFall))}{@threshold}',
      round: 'up',
    },
  },
  compute: ({ tank, crossFall, threshold, radius, offset, pace }) => {
    const pull = slopePull(crossFall)
    const back = sidePush(pace, radius + offset, GRAVITY) * Math.cos(Math.atan(crossFall))
    return {
      water: waterDensity * tank,
      pull,
      used: pull / threshold,
      moving:
        back <= pull
          ? (pull - back) / threshold
          : refuse(
              'at that speed the truck is thrown outward: a water truck belongs at walking pace',
            ),
    }
  },
})
