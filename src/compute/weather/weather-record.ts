import { dayNumber } from '../../model/day.ts'
import type { WeatherDay } from '../../model/weather.ts'
import { calculation, type InputSpec } from '../calculation.ts'
import { depthTargetInput, workedWeightInput } from '../cushion/cushion-inputs.ts'
import { areaInput } from '../oval/oval-inputs.ts'
import { layerWater } from './layer-drying.ts'
import { type RecordedDay, weatherRun } from './weather-run.ts'
import { drawInput, fillInput, solidsInput, waterInput } from './wetted-inputs.ts'
import { poreWater, waterOfMoisture } from './wetted-layer.ts'

/** What the layer of a record is made of; SI, moistures by dry weight. */
export type RecordInput = {
  readonly depth: number
  readonly unitWeight: number
  readonly held: number
  readonly target: number
  readonly dusty: number
  readonly share: number
  readonly solids: number
  /** Ends of what cannot be known; the record goes by their middle. */
  readonly fillEarly: number
  readonly fillLate: number
  readonly baseEarly: number
  readonly baseLate: number
  readonly pondEarly: number
  readonly pondLate: number
  readonly drawEarly: number
  readonly drawLate: number
  readonly latitude: number
  readonly elevation: number
  readonly windHeight: number
}

const middle = (early: number, late: number): number => (early + late) / 2

/** The open layer of this facility through its record of weather. */
export function recordedDays(days: readonly WeatherDay[], x: RecordInput): readonly RecordedDay[] {
  const { total, readily } = layerWater(x.depth, x.unitWeight, x.held, x.dusty, x.share)
  const material = { depth: x.depth, worked: x.unitWeight, solids: x.solids }
  const perMoisture = waterOfMoisture(material)
  const full = poreWater(material, x.unitWeight, middle(x.fillEarly, x.fillLate))
  return weatherRun(days, x, {
    total,
    readily,
    wanted: Math.min(Math.max(0, (x.held - x.target) * perMoisture), total),
    aboveHeld: Math.max(0, full - x.held * perMoisture),
    base: middle(x.baseEarly, x.baseLate),
    hollows: middle(x.pondEarly, x.pondLate),
    draw: middle(x.drawEarly, x.drawLate),
  })
}

/** What carries the layer from day to day. */
const course = {
  depth: depthTargetInput,
  unitWeight: workedWeightInput,
  held: { symbol: 'w_h', kind: 'fineShare', range: [0.01, 0.6] },
  target: { symbol: 'w', kind: 'fineShare', range: [0, 0.5] },
  dusty: { symbol: 'w_d', kind: 'fineShare', range: [0, 0.4] },
  share: { symbol: 'p', kind: 'share', range: [0.1, 0.95] },
  solids: solidsInput,
  fillEarly: fillInput('a_q'),
  fillLate: fillInput('a_s'),
  baseEarly: waterInput('B_1'),
  baseLate: waterInput('B_2'),
  pondEarly: waterInput('D_1'),
  pondLate: waterInput('D_2'),
  drawEarly: drawInput('K_q'),
  drawLate: drawInput('K_s'),
  latitude: { symbol: '\\varphi', kind: 'fineAngle', range: [-1.16, 1.16] },
  elevation: { symbol: 'h', kind: 'elevation', range: [-430, 4600] },
  windHeight: { symbol: 'z', kind: 'width', range: [0.5, 16] },
} as const satisfies Readonly<Record<string, InputSpec>>

/** What each day's water rests on, beside the record. */
const restsOn = Object.keys(course)

/**
 * What a record of daily weather has taken out of an unwatered cushion, and what would bring it
 * back.
 * @param days Oldest first, at least one.
 */
export const weatherRecord = (days: readonly WeatherDay[]) =>
  calculation({
    id: 'weather-record',
    sources: ['fao-56', 'asce-77', 'common-practice'],
    inputs: {
      ...course,
      area: areaInput,
    },
    outputs: {
      days: { symbol: 'n', kind: 'count', tex: '\\textstyle\\sum_i 1' },
      rain: { symbol: 'P', kind: 'waterDepth', tex: '\\textstyle\\sum_i P_i' },
      drawn: {
        symbol: 'ET_o',
        kind: 'waterDepth',
        tex: '\\textstyle\\sum_i ET_{o,i}',
        restsOn: ['latitude', 'elevation', 'windHeight'],
      },
      lost: {
        symbol: 'E',
        kind: 'waterDepth',
        tex: '\\textstyle\\sum_i K_{e,i}\\,ET_{o,i}',
        restsOn,
      },
      runs: { symbol: 'Q', kind: 'waterDepth', tex: '\\textstyle\\sum_i Q_i', restsOn },
      base: { symbol: 'B', kind: 'waterDepth', tex: '\\textstyle\\sum_i B_i', restsOn },
      wet: { symbol: 'n_w', kind: 'count', tex: '\\textstyle\\sum_{w_i > w_h} 1', restsOn },
      moisture: {
        symbol: 'w_n',
        kind: 'fineShare',
        tex: '@held - \\frac{D_n\\,\\rho_{water}}{@unitWeight\\,@depth}',
        restsOn,
      },
      short: {
        symbol: 'd',
        kind: 'waterDepth',
        tex: '\\max\\left(0,\\,(@target - @moisture)\\,\\frac{@unitWeight}{\\rho_{water}}\\,@depth\\right)',
      },
      water: { symbol: 'V', kind: 'waterVolume', tex: '@short\\,@area', round: 'up' },
    },
    told: { first: days[0]?.date ?? '', last: days.at(-1)?.date ?? '' },
    steps: {
      days: (x) => ({
        columns: [
          { symbol: 'D', kind: 'date' },
          { symbol: 'P', kind: 'waterDepth' },
          { symbol: 'ET_o', kind: 'waterDepth' },
          { symbol: 'E', kind: 'waterDepth' },
          { symbol: 'B', kind: 'waterDepth' },
          { symbol: 'Q', kind: 'waterDepth' },
          { symbol: '\\text{stands}', kind: 'waterDepth' },
          { symbol: 'D_n', kind: 'waterDepth' },
        ],
        rows: recordedDays(days, x).map((d) => [
          dayNumber(d.day.date),
          d.day.rain,
          d.drawn,
          d.lost,
          d.base,
          d.runs,
          d.stands,
          d.depleted,
        ]),
      }),
    },
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
        runs: sum((d) => d.runs),
        base: sum((d) => d.base),
        wet: run.filter((d) => d.depleted < 0 || d.stands > 0).length,
        moisture,
        short,
        water: short * x.area,
      }
    },
  })
