import { inch } from '../../model/quantity/units.ts'
import type { WeatherDay } from '../../model/weather.ts'
import { calculation } from '../calculation.ts'
import { depthTargetInput, workedWeightInput } from '../cushion/cushion-inputs.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { layerWater } from './layer-drying.ts'
import { retention, runoffDepth } from './runoff.ts'
import { type RecordedDay, weatherRun } from './weather-run.ts'

/** What the layer of a record is made of; SI, moistures by dry weight. */
export type RecordInput = {
  readonly depth: number
  readonly unitWeight: number
  readonly held: number
  readonly target: number
  readonly dusty: number
  readonly share: number
  readonly curve: number
  readonly latitude: number
  readonly elevation: number
  readonly windHeight: number
}

/** The layer of this facility through its record of weather. */
export function recordedDays(days: readonly WeatherDay[], x: RecordInput): readonly RecordedDay[] {
  const { total, readily } = layerWater(x.depth, x.unitWeight, x.held, x.dusty, x.share)
  const wanted = Math.max(0, ((x.held - x.target) * x.unitWeight * x.depth) / 1000)
  return weatherRun(days, x, {
    total,
    readily,
    wanted: Math.min(wanted, total),
    runoff: (rain) => runoffDepth(rain / inch, retention(x.curve)) * inch,
  })
}

/**
 * What a record of daily weather has taken out of an unwatered cushion, and what would bring it
 * back.
 * @param days Oldest first, at least one.
 */
export const weatherRecord = (days: readonly WeatherDay[]) =>
  calculation({
    id: 'weather-record',
    sources: ['fao-56', 'nrcs-tr-55'],
    inputs: {
      depth: depthTargetInput,
      unitWeight: workedWeightInput,
      held: { symbol: 'w_h', kind: 'fineShare', range: [0.01, 0.6] },
      target: { symbol: 'w', kind: 'fineShare', range: [0, 0.5] },
      dusty: { symbol: 'w_d', kind: 'fineShare', range: [0, 0.4] },
      share: { symbol: 'p', kind: 'share', range: [0.1, 0.95] },
      curve: { symbol: 'CN', kind: 'count', range: [30, 100] },
      latitude: { symbol: '\\varphi', kind: 'fineAngle', range: [-1.16, 1.16] },
      elevation: { symbol: 'h', kind: 'elevation', range: [-430, 4600] },
      windHeight: { symbol: 'z', kind: 'width', range: [0.5, 16] },
      area: areaInput,
    },
    outputs: {
      days: { symbol: 'n', kind: 'count', tex: '\\textstyle\\sum_i 1' },
      rain: { symbol: 'P', kind: 'waterDepth', tex: '\\textstyle\\sum_i P_i' },
      drawn: { symbol: 'ET_o', kind: 'waterDepth', tex: '\\textstyle\\sum_i ET_{o,i}' },
      lost: { symbol: 'E', kind: 'waterDepth', tex: '\\textstyle\\sum_i K_{e,i}\\,ET_{o,i}' },
      moisture: {
        symbol: 'w_n',
        kind: 'fineShare',
        tex: '@held - \\frac{D_n\\,\\rho_{water}}{@unitWeight\\,@depth}',
      },
      short: {
        symbol: 'd',
        kind: 'waterDepth',
        tex: '\\max\\left(0,\\,(@target - w_n)\\,\\frac{@unitWeight}{\\rho_{water}}\\,@depth\\right)',
      },
      water: { symbol: 'V', kind: 'waterVolume', tex: 'd\\,@area', round: 'up' },
    },
    told: { first: days[0]?.date ?? '', last: days.at(-1)?.date ?? '' },
    compute: (x) => {
      const run = recordedDays(days, x)
      const sum = (of: (d: RecordedDay) => number): number =>
        run.reduce((total, d) => total + of(d), 0)
      const moisture = Math.max(
        0,
        x.held - ((run.at(-1)?.depleted ?? 0) * 1000) / (x.unitWeight * x.depth),
      )
      const short = Math.max(0, ((x.target - moisture) * x.unitWeight * x.depth) / 1000)
      return {
        days: run.length,
        rain: sum((d) => d.day.rain),
        drawn: sum((d) => d.drawn),
        lost: sum((d) => d.lost),
        moisture,
        short,
        water: short * x.area,
      }
    },
  })
