import { groupsAt } from '../../../edit/form/data.ts'
import type { Value } from '../../../edit/written.ts'
import { addDays, isDay } from '../../../model/day.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { button } from '../../element.ts'
import type { Sitting } from '../sitting.ts'
import type { ListQuestion } from './list.ts'
import { openEntry } from './open-entry.ts'

/** A race day like the last one, a day later, in one touch. */
export function nextDay(
  sitting: Sitting,
  question: ListQuestion,
  at: Path,
  count: number,
): readonly HTMLButtonElement[] {
  if (question.path.join('.') !== 'race-days') return []
  const last = groupsAt(sitting.draft().data, at)[count - 1]
  const date = String(last?.['date'] ?? '')
  if (!last || !isDay(date)) return []
  const made = button(sitting.said.form.says.list.likeLast, () => {
    const value = { ...last, date: addDays(date, 1) } as Value
    openEntry(at, count)
    sitting.answer([{ path: [...at, count], value }], '')
    sitting.reshape()
  })
  return [made]
}
