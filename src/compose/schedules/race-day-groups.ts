import { raceDayValues } from '../../compute/facts/race-day-values.ts'
import type { Quantity } from '../../model/quantity/parse-quantity.ts'
import type { ComposeContext } from '../context.ts'
import { shortDate } from '../dates.ts'

/** Race days that are alike, and what they are composed with: the figures with their numbers. */
export type DayGroup = { readonly dates: string; readonly context: ComposeContext }

/** Race days by date; those with the same card share a group. */
export function raceDayGroups(context: ComposeContext): readonly DayGroup[] {
  const { file } = context.facility
  const days = (file['race-days'] ?? []).toSorted((a, b) => a.date.localeCompare(b.date))
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
            dates: group.map((d) => shortDate(d.date, context)).join('; '),
            context: {
              ...context,
              engine: context.engine.vary(raceDayValues(first, file.place['time-zone'])),
            },
          },
        ]
      : []
  })
}
