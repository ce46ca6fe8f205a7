import type { Engine } from '../../compute/engine/engine.ts'
import { raceDayValues } from '../../compute/facts/race-day-values.ts'
import { dayNumber } from '../../model/day.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import { type ComposeContext, namedNumber } from '../context.ts'
import { shortDate } from '../dates.ts'

/** Race days that are alike, and what they are composed with: the figures with their numbers. */
export type DayGroup = {
  readonly dates: string
  readonly context: ComposeContext
  /** The race days that follow on the morrow of one of these. */
  readonly morrows: readonly Engine[]
}

const siOf = (value: unknown): number | string => (value as Quantity | undefined)?.si ?? ''

/** The same manual with the numbers of one race day. */
const contextOf = (engine: Engine, context: ComposeContext): ComposeContext => ({
  ...context,
  engine,
  here: { ...context.here, si: (name) => namedNumber(name, { engine }) },
})

/** Race days by date, and the engine of each. */
function datedDays(context: ComposeContext) {
  const { file } = context.facility
  const days = (file['race-days'] ?? []).toSorted((a, b) => a.date.localeCompare(b.date))
  const engineOf = (d: (typeof days)[number]): Engine =>
    context.engine.vary(raceDayValues(d, file.place['time-zone']))
  return { days, engineOf }
}

/** Each race day by date, and what it is composed with. */
export function eachRaceDay(context: ComposeContext) {
  const { days, engineOf } = datedDays(context)
  return days.map((day) => ({ day, context: contextOf(engineOf(day), context) }))
}

/** Race days by date; those with the same card share a group. */
export function raceDayGroups(context: ComposeContext): readonly DayGroup[] {
  const { days, engineOf } = datedDays(context)
  const dated = new Map(days.map((d) => [dayNumber(d.date), d]))
  const alike = new Map<string, typeof days>()
  for (const d of days) {
    const key = `${d['first-post']} ${d.races} ${siOf(d.interval)} ${siOf(d['break-every'])} ${siOf(d.break)}`
    alike.set(key, [...(alike.get(key) ?? []), d])
  }
  const morrowsOf = (group: typeof days): readonly Engine[] =>
    group.flatMap((d) => {
      const next = dated.get(dayNumber(d.date) + 1)
      return next ? [engineOf(next)] : []
    })
  return [...alike.values()].flatMap((group) => {
    const first = group[0]
    const dates = group.map((d) => shortDate(d.date, context)).join('; ')
    return first
      ? [{ dates, context: contextOf(engineOf(first), context), morrows: morrowsOf(group) }]
      : []
  })
}
