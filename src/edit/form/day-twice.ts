import type { Path } from '../../read/read-yaml.ts'
import { groupsAt, valueAt } from './data.ts'

/** Whether a race day stands in the list already, above the one at a path. */
export function isDayTwice(data: unknown, at: Path): boolean {
  const [list, index, field] = at
  if (list !== 'race-days' || field !== 'date') return false
  const day = valueAt(data, at)
  const above = groupsAt(data, ['race-days']).slice(0, Number(index))
  return day !== undefined && above.some(({ date }) => date === day)
}
