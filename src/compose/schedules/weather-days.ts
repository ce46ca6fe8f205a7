import { recordedDays } from '../../compute/weather/weather-record.ts'
import type { TableRows } from '../../model/manual/schedule.ts'
import { type ComposeContext, printed } from '../context.ts'
import { shortDate } from '../dates.ts'

/** Where the rows take their numbers from, beside the record. */
export const weatherDayInputs = {
  depth: 'cushion.depth.target',
  unitWeight: 'cushion.unit-weight.worked',
  held: 'cushion.moisture.held',
  target: 'cushion.moisture.target',
  dusty: 'cushion.moisture.dusty',
  share: 'practice.readily',
  solids: 'cushion.unit-weight.solids',
  fillEarly: 'practice.wetting.fill-early',
  fillLate: 'practice.wetting.fill-late',
  baseEarly: 'practice.wetting.base-early',
  baseLate: 'practice.wetting.base-late',
  pondEarly: 'practice.wetting.pond-open-early',
  pondLate: 'practice.wetting.pond-open-late',
  drawEarly: 'practice.wetting.draw-early',
  drawLate: 'practice.wetting.draw-late',
  latitude: 'place.latitude',
  windHeight: 'practice.wind-height',
} as const

/** The last days of the record: as many as two weeks of work look back on. */
const shown = 14

/**
 * One row for each of the last days of the weather record: the same run of days that the figure
 * adds up.
 */
export function weatherDayRows(context: ComposeContext): TableRows {
  const { engine, facility } = context
  const known = engine.siOfAll(weatherDayInputs)
  const days = facility.imported.weather[0]
  if (!days || !known) return []
  const input = { ...known, elevation: engine.si('place.elevation') ?? 0 }
  const moistureAt = (depleted: number): number =>
    Math.max(0, input.held - (depleted * 1000) / (input.unitWeight * input.depth))
  return recordedDays(days, input)
    .slice(-shown)
    .map(({ day, drawn, lost, runs, depleted }) => [
      shortDate(day.date, context),
      `${printed(day.high, 'temperature', context)} / ${printed(day.low, 'temperature', context)}`,
      printed(day.rain, 'waterDepth', context),
      printed(runs, 'waterDepth', context),
      printed(drawn, 'waterDepth', context),
      printed(lost, 'waterDepth', context),
      printed(moistureAt(depleted), 'fineShare', context),
    ])
}
