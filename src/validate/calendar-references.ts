import type { Problem } from '../model/problem.ts'
import type { Library, Sourced } from './check-library.ts'
import { checkRef } from './library-references.ts'
import type { Calendar } from './schemas/calendars.ts'
import type { ScheduleTable } from './schemas/plans.ts'

const isDated = (table: ScheduleTable): boolean =>
  table.rows?.some((row) => row.on !== undefined || row.after !== undefined) ?? false

/** What calendars take from plans and no plan has. */
export function calendarReferences({
  calendars,
  schedules,
}: Pick<Library, 'calendars' | 'schedules'>): Problem[] {
  const all = schedules.flatMap((plan) => plan.value.tables)
  const tables = {
    what: 'table of a plan with dates',
    ids: new Set(all.filter(isDated).map((table) => table.id)),
  }
  const roles = {
    what: 'role of a shift in a plan',
    ids: new Set(all.flatMap((table) => table.rows ?? []).flatMap((row) => row.shift?.role ?? [])),
  }
  const refs = (item: Sourced<Calendar>): Problem[] => [
    ...(item.value.tables ?? []).flatMap((id, i) => checkRef(item, ['tables', i], id, tables)),
    ...(item.value.shifts ?? []).flatMap((id, i) => checkRef(item, ['shifts', i], id, roles)),
  ]
  return calendars.flatMap(refs)
}
