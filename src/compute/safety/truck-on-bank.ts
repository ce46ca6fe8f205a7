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
  sources: ['nrc-tank-trucks', 'openstax-physics', 'geometry'],
  inputs: {
    tank: { symbol: 'T', kind: 'waterVolume', range: [0.05, 60] },
    crossFall: crossFallTurnsInput,
    threshold: { symbol: 'r', kind: 'share', range: [0.15, 0.8] },
    radius: radiusInput,
    offset: offsetInput,
    pace: { symbol: 'v', kind: 'speed', range: [0.2, 14] },
  },
  outputs: {
    water: { symbol: 'M', kind: 'machineMass', tex: '\\rho_{\\text{water}}\\,@tank' },
    pull: { symbol: 's', kind: 'fineShare', tex: '\\sin(\\arctan(@crossFall))' },
    used: { symbol: 'p', kind: 'share', tex: '\\frac{@pull}{@threshold}', round: 'up' },
    moving: {
      symbol: 'p_v',
      kind: 'share',
      tex: '\\frac{@pull - \\frac{(@pace)^2}{g\\,(@radius + @offset)} \\cdot \\cos(\\arctan(@crossFall))}{@threshold}',
      round: 'up',
    },
  },
  terms: ['water'],
  refusals: ['thrown-outward'],
  compute: ({ tank, crossFall, threshold, radius, offset, pace }) => {
    const pull = slopePull(crossFall)
    const back = sidePush(pace, radius + offset, GRAVITY) * Math.cos(Math.atan(crossFall))
    return {
      water: waterDensity * tank,
      pull,
      used: pull / threshold,
      moving: back <= pull ? (pull - back) / threshold : refuse('thrown-outward'),
    }
  },
})
