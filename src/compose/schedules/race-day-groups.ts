import type { Engine } from '../../compute/engine/engine.ts'
import { raceDayValues } from '../../compute/facts/race-day-values.ts'
import { storeBetween } from '../../compute/water/store.ts'
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

type Entry = NonNullable<ComposeContext['facility']['file']['race-days']>[number]

/** With what the store begins the next race day, m³, where there is one. */
function nextMorning(engine: Engine, daysBetween: number): number | undefined {
  const store = engine.siOfAll({ next: 'store.next', full: 'water.storage' })
  const round = engine.siOfAll({
    loads: 'round.loads',
    each: 'round.each',
    usable: 'gear.spray.usable',
  })
  if (!(store && round)) return undefined
  const drawn = (round.loads * round.each) / round.usable
  const recharge = engine.si('water.recharge') ?? 0
  return storeBetween(store.next, daysBetween, { full: store.full, drawn, recharge })
}

/** Race days by date, and the engine of each: what one day leaves in store is there for the next. */
function datedDays(context: ComposeContext) {
  const { file } = context.facility
  const days = (file['race-days'] ?? []).toSorted((a, b) => a.date.localeCompare(b.date))
  const engines = new Map<Entry, Engine>()
  let morning: number | undefined
  days.forEach((day, i) => {
    const values = new Map(raceDayValues(day, file.place['time-zone']))
    if (morning !== undefined) values.set('store.morning', morning)
    const engine = context.engine.vary(values)
    engines.set(day, engine)
    const next = days[i + 1]
    if (next) morning = nextMorning(engine, dayNumber(next.date) - dayNumber(day.date) - 1)
  })
  const engineOf = (d: Entry): Engine => engines.get(d) ?? context.engine
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
    const key = `${d['first-post']} ${d.races} ${siOf(d.interval)} ${siOf(d['break-every'])} ${siOf(d.break)} ${engineOf(d).si('store.morning') ?? ''}`
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
