import { calculation, refuse } from '../calculation.ts'
import { depthTargetInput, workedWeightInput } from '../cushion/cushion-inputs.ts'
import { evaporableWater } from './bare-soil.ts'
import { wetSurface } from './wet-surface.ts'

/** Water, m, that a bare layer can lose in all, and as fast as the air draws it. */
export function layerWater(
  depth: number,
  unitWeight: number,
  held: number,
  dusty: number,
  share: number,
): { readonly total: number; readonly readily: number } {
  // Contents by dry weight become contents by volume with the dry unit weight over that of water.
  const byVolume = unitWeight / 1000
  const total = evaporableWater(held * byVolume, dusty * byVolume, depth) / 1000
  return { total, readily: share * total }
}

/**
 * Time, s, until a bare layer has lost a depth of water: at the full rate while readily evaporable
 * water lasts, then ever more slowly (FAO-56 Eqs. 71 and 74, without steps of a day).
 * @param rate m/s from the wet surface.
 * @param lost m, below the total.
 */
export const dryingTime = (lost: number, total: number, readily: number, rate: number): number =>
  lost <= readily
    ? lost / rate
    : readily / rate + ((total - readily) / rate) * Math.log((total - readily) / (total - lost))

/**
 * Depletion, m, of a bare layer after a time: the same law the other way around. Steps of a whole
 * day, as FAO-56 takes them, overshoot on a layer as thin as a cushion.
 * @param start Depletion at the beginning, m.
 * @param time s.
 */
export function depletionAfter(
  start: number,
  total: number,
  readily: number,
  rate: number,
  time: number,
): number {
  const fast = Math.max(0, readily - start) / rate
  if (time <= fast) return start + rate * time
  const from = Math.max(start, readily)
  return total - (total - from) * Math.exp((-rate * (time - fast)) / (total - readily))
}

/**
 * How long the whole cushion takes to dry from full to the moisture wanted, and from there to dust.
 */
export const layerDrying = calculation({
  id: 'layer-drying',
  sources: ['fao-56'],
  inputs: {
    depth: depthTargetInput,
    unitWeight: workedWeightInput,
    held: { symbol: 'w_h', kind: 'fineShare', range: [0.01, 0.6] },
    target: { symbol: 'w', kind: 'fineShare', range: [0, 0.5] },
    dusty: { symbol: 'w_d', kind: 'fineShare', range: [0, 0.4] },
    share: { symbol: 'p', kind: 'share', range: [0.1, 0.95] },
    rate: { symbol: 'ET_o', kind: 'dailyWater', range: [1e-10, 3e-7] },
  },
  outputs: {
    total: {
      symbol: 'W',
      kind: 'waterDepth',
      tex: '\\left(@held - \\tfrac12 @dusty\\right)\\frac{@unitWeight}{\\rho_{water}}\\,@depth',
    },
    readily: { symbol: 'W_r', kind: 'waterDepth', tex: '@share\\,@total' },
    workable: {
      symbol: 't_w',
      kind: 'dryDays',
      tex: 't(@held - @target),\\quad t(D) = \\frac{\\min(D,\\,@readily)}{1.2\\,@rate} + \\frac{@total - @readily}{1.2\\,@rate} \\ln\\frac{@total - @readily}{@total - \\max(D,\\,@readily)}',
    },
    dust: { symbol: 't_d', kind: 'dryDays', tex: 't(@held - @dusty) - @workable' },
  },
  refusals: ['moisture-not-between'],
  compute: (x) => {
    const { total, readily } = layerWater(x.depth, x.unitWeight, x.held, x.dusty, x.share)
    const lost = (moisture: number): number => ((x.held - moisture) * x.unitWeight * x.depth) / 1000
    if (!(x.held > x.target && x.target > x.dusty)) {
      const no = refuse('moisture-not-between')
      return { total, readily, workable: no, dust: no }
    }
    const after = (moisture: number): number =>
      dryingTime(lost(moisture), total, readily, wetSurface * x.rate)
    return { total, readily, workable: after(x.target), dust: after(x.dusty) - after(x.target) }
  },
})
