import { calculation } from '../calculation.ts'

const water = 1000

/** Sideways pull on a water truck that stands on a banked turn, and how much of its stability that uses. */
export const truckOnBank = calculation({
  id: 'truck-on-bank',
  title: 'A water truck on the banked turn',
  about: 'A bank pulls a truck sideways with a share of its weight even while it stands. Tank trucks have been measured to turn over when the sideways pull reached little more than a third of their weight. What the bank uses is gone before the truck has taken a curve, hit a soft edge or sloshed its water; so the rest must not be spent on speed.',
  sources: ['nrc-tank-trucks', 'geometry'],
  inputs: {
    tank: { symbol: 'T', label: 'tank', kind: 'waterVolume', range: [0.05, 60] },
    crossFall: { symbol: 'e', label: 'cross-fall on the turns', kind: 'fineShare', range: [0.002, 0.16] },
    threshold: { symbol: 'r', label: 'sideways pull at which a tank truck may turn over, as a share of its weight', kind: 'share', range: [0.15, 0.8] },
  },
  outputs: {
    water: { symbol: 'M', label: 'of water in a full tank', kind: 'machineMass', tex: '\\rho_{water}\\,@tank' },
    pull: { symbol: 's', label: 'of its weight pulls the truck down the bank', kind: 'fineShare', tex: '\\sin(\\arctan @crossFall)' },
    used: { symbol: 'p', label: 'of what tips it over is used up standing still', kind: 'share', tex: '\\frac{@pull}{@threshold}', round: 'up' },
  },
  compute: (x) => {
    const pull = Math.sin(Math.atan(x.crossFall))
    return { water: water * x.tank, pull, used: pull / x.threshold }
  },
})
