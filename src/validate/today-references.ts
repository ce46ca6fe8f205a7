import type { Problem } from '../model/problem.ts'
import type { Library, Sourced } from './check-library.ts'
import { checkRef, names } from './library-references.ts'
import type { TodayFile } from './schemas/today.ts'

/** What the numbers of the day name and nobody has: the plan of the day's list, and its table. */
export function todayReferences(
  item: Sourced<TodayFile>,
  { schedules }: Pick<Library, 'schedules'>,
): Problem[] {
  const { plan, table } = item.value.list
  const found = schedules.find((s) => s.value.id === plan)
  return [
    ...checkRef(item, ['list', 'plan'], plan, names('plan', schedules)),
    ...(found
      ? checkRef(item, ['list', 'table'], table, {
          what: `table in the plan "${plan}"`,
          ids: new Set(found.value.tables.map((t) => t.id)),
        })
      : []),
  ]
}
