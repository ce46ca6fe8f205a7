import { type RecordInput, recordedDays } from '../../compute/weather/weather-record.ts'
import { shortDate } from './dates.ts'
import { numberOf, type PlanContext, printed } from './plan-context.ts'

const names: Readonly<Record<keyof RecordInput, string>> = {
  depth: 'cushion.depth.target',
  unitWeight: 'cushion.unit-weight.worked',
  held: 'cushion.moisture.held',
  target: 'cushion.moisture.target',
  dusty: 'cushion.moisture.dusty',
  share: 'practice.readily',
  curve: 'practice.open-curve-number',
  latitude: 'place.latitude',
  elevation: 'place.elevation',
  windHeight: 'practice.wind-height',
}

/** The last days of the record: as many as two weeks of work look back on. */
const shown = 14

/**
 * One row for each of the last days of the weather record: the same run of days that the figure
 * adds up.
 */
export function weatherRows(context: PlanContext): readonly (readonly string[])[] {
  const { weather } = context.facility
  const input = Object.fromEntries(
    Object.entries(names).map(([key, name]) => [
      key,
      numberOf(context.computed.engine, name) ?? (key === 'elevation' ? 0 : Number.NaN),
    ]),
  ) as RecordInput
  if (weather.length === 0 || Object.values(input).some(Number.isNaN)) return []
  return recordedDays(weather, input)
    .slice(-shown)
    .map(({ day, drawn, lost, depleted }) => [
      shortDate(day.date, context.computed.locale.system),
      `${printed(day.high, 'temperature', context)} / ${printed(day.low, 'temperature', context)}`,
      printed(day.rain, 'waterDepth', context),
      printed(drawn, 'waterDepth', context),
      printed(lost, 'waterDepth', context),
      printed(
        Math.max(0, input.held - (depleted * 1000) / (input.unitWeight * input.depth)),
        'fineShare',
        context,
      ),
    ])
}
