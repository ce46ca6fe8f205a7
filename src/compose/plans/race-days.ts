import type { Engine } from '../../compute/engine/engine.ts'
import { raceDayValues } from '../../compute/facts/race-day-values.ts'
import type { Quantity } from '../../model/quantity/parse-quantity.ts'
import { shortDate } from './dates.ts'
import type { PlanContext } from './plan-context.ts'

/** Race days that are alike, and the figures with their numbers. */
export type DayGroup = { readonly dates: string; readonly engine: Engine }

/** Race days by date; those with the same card share a group. */
export function raceDayGroups({ facility, computed }: PlanContext): readonly DayGroup[] {
  const { file } = facility
  const days = [...(file['race-days'] ?? [])].sort((a, b) => a.date.localeCompare(b.date))
  const alike = new Map<string, typeof days>()
  for (const d of days) {
    const key = `${d['first-post']} ${d.races} ${(d.interval as Quantity | undefined)?.si ?? ''}`
    alike.set(key, [...(alike.get(key) ?? []), d])
  }
  return [...alike.values()].flatMap((group) => {
    const first = group[0]
    return first
      ? [
          {
            dates: group.map((d) => shortDate(d.date, computed.locale.system)).join('; '),
            engine: computed.engine.vary(raceDayValues(first, file.place['time-zone'])),
          },
        ]
      : []
  })
}
