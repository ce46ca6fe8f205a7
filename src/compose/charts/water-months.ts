import type { WaterMonth } from '../../model/manual/charts.ts'
import type { ComposeContext } from '../context.ts'
import { monthName } from '../dates.ts'
import { monthEngines } from '../facility/month-engines.ts'

/** Water that a dry day takes, month by month; undefined where fewer than two are known. */
export function composeWaterMonths(context: ComposeContext): readonly WaterMonth[] | undefined {
  const months = monthEngines(context).flatMap(({ month, own, engine }): WaterMonth[] => {
    const water = engine.figure('demand.water')?.value
    const loads = engine.text('demand.loads')
    return water?.ok && loads !== undefined
      ? [
          {
            name: monthName(month, context),
            short: monthName(month, context, 'shortMonths'),
            water: water.si,
            text: water.text,
            loads,
            own,
          },
        ]
      : []
  })
  return months.length < 2 ? undefined : months
}
