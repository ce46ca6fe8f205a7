import { secondsPerDay } from '../../model/day.ts'
import { calculation, refuse } from '../calculation.ts'

/**
 * The store over one race day by the plan (m³): what is drawn at the most, tanks and all, what there
 * is for it, what is left in the evening, and with what the next day begins after a night of refilling.
 */
export const storeDay = calculation({
  id: 'store-day',
  sources: ['geometry', 'common-practice'],
  inputs: {
    full: { symbol: 'S', kind: 'waterVolume', range: [0, 40_000] },
    morning: { symbol: 'S_0', kind: 'waterVolume', range: [0, 40_000] },
    need: { symbol: 'V', kind: 'waterVolume', range: [0, 1e5] },
    usable: { symbol: 'u', kind: 'share', range: [0.3, 1] },
    recharge: { symbol: 'q_r', kind: 'waterFlow', range: [0, 0.4] },
    hours: { symbol: 'h', kind: 'hours', range: [0, secondsPerDay] },
  },
  outputs: {
    drawn: { symbol: 'V_d', kind: 'waterVolume', tex: '\\frac{@need}{@usable}', round: 'up' },
    hand: {
      symbol: 'S_h',
      kind: 'waterVolume',
      tex: '@morning + @recharge\\,@hours',
      round: 'down',
    },
    left: {
      symbol: 'S_1',
      kind: 'waterVolume',
      tex: '\\min(@full,\\,@hand - @drawn)',
      round: 'down',
    },
    next: {
      symbol: "S_0'",
      kind: 'waterVolume',
      tex: '\\min\\left(@full,\\; \\max(0,\\,@hand - @drawn) + @recharge\\,(24\\,\\text{h} - @hours)\\right)',
      round: 'down',
    },
  },
  refusals: ['store-empty'],
  compute: (x) => {
    const drawn = x.need / x.usable
    const hand = x.morning + x.recharge * x.hours
    const left = hand - drawn
    const night = x.recharge * (secondsPerDay - x.hours)
    return {
      drawn,
      hand,
      // What runs into a full store runs over.
      left: left >= 0 ? Math.min(x.full, left) : refuse('store-empty'),
      next: Math.min(x.full, Math.max(0, left) + night),
    }
  },
})

/**
 * What is in store (m³) after days without races: each takes a round, and is refilled around the clock.
 * @param days Days between two race days.
 */
export function storeBetween(
  store: number,
  days: number,
  {
    full,
    drawn,
    recharge,
  }: { readonly full: number; readonly drawn: number; readonly recharge: number },
): number {
  let left = store
  for (let day = 0; day < days; day++)
    left = Math.min(full, Math.max(0, left - drawn) + recharge * secondsPerDay)
  return left
}
