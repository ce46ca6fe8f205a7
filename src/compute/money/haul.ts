import { calculation, type InputSpec } from '../calculation.ts'
import { wholeUp } from '../whole-up.ts'
import { drivingTime, tripTime, trucksInBalance, trucksWithSpare } from './hauling.ts'
import { loadingRate, loadRate } from './loading.ts'

const minutes = (symbol: string): InputSpec => ({ symbol, kind: 'minutes', range: [0, 7200] })

/**
 * Stone from the heap to the track: how long a round trip takes, how many trucks keep the loader
 * busy, and what they move in an hour. The mean way is a quarter of a lap, since a truck takes the
 * shorter way around.
 */
export const haul = calculation({
  id: 'hauling',
  sources: ['fm-5-434', 'common-practice'],
  inputs: {
    bed: { symbol: 'm', kind: 'mass', range: [50, 60_000] },
    bucket: { symbol: 'V_b', kind: 'patchVolume', range: [0.02, 10] },
    fill: { symbol: 'f', kind: 'share', range: [0.3, 1.3] },
    weight: { symbol: '\\rho_l', kind: 'unitWeight', range: [500, 2800] },
    bucketTime: { symbol: 't_b', kind: 'seconds', range: [5, 600] },
    lap: { symbol: 'L', kind: 'distance', range: [100, 4000] },
    speed: { symbol: 'v', kind: 'speed', range: [0.5, 20] },
    dump: minutes('t_d'),
    spot: minutes('t_s'),
    working: { symbol: 'e', kind: 'share', range: [0.2, 1] },
    trucks: { symbol: 'n', kind: 'count', range: [1, 40] },
  },
  outputs: {
    buckets: {
      symbol: 'n_b',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@bed}{@weight\\,@bucket\\,@fill} \\right\\rceil',
    },
    way: { symbol: 't_w', kind: 'minutes', tex: '\\frac{@lap}{4 \\cdot @speed}' },
    load: {
      symbol: 't_l',
      kind: 'minutes',
      tex: '\\frac{@bed\\,@bucketTime}{@weight\\,@bucket\\,@fill}',
    },
    trip: {
      symbol: 'T',
      kind: 'minutes',
      tex: '@load + 2 \\cdot @way + @dump + @spot',
    },
    balance: {
      symbol: 'n_1',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@trip}{@load} \\right\\rceil',
    },
    spare: {
      symbol: 'n_2',
      kind: 'whole',
      tex: '\\left\\lceil 1 + \\frac{@trip}{@load} \\right\\rceil',
    },
    rate: {
      symbol: 'q',
      kind: 'massRate',
      tex: '@working\\,\\min\\left(\\frac{@bed}{@load},\\,\\frac{@trucks\\,@bed}{@trip}\\right)',
      round: 'down',
    },
  },
  compute: (x) => {
    const load = x.bed / (x.weight * loadingRate(x.bucket, x.fill, x.bucketTime, 1))
    const way = drivingTime(x.lap / 4, x.speed)
    const trip = tripTime({ load, haul: way, dump: x.dump, back: way, spot: x.spot })
    return {
      buckets: wholeUp(x.bed / (x.weight * x.bucket * x.fill)),
      way,
      load,
      trip,
      balance: wholeUp(trucksInBalance(trip, load)),
      spare: trucksWithSpare(trip, load),
      // The loader is the limit where there are trucks enough.
      rate: Math.min(loadRate(x.bed, load, x.working), x.trucks * loadRate(x.bed, trip, x.working)),
    }
  },
})
