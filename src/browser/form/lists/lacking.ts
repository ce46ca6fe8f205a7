import { valueAt } from '../../../edit/form/data.ts'
import { aboutQuestion } from '../../../edit/form/question.ts'
import { isLacking } from '../../../edit/form/understood.ts'
import { fill } from '../../../model/pattern.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { calledAt } from '../problem-at.ts'
import type { Sitting } from '../sitting.ts'
import type { ListQuestion } from './list.ts'

/** What does not fit in an entry of a list, by what it is called. */
function misfitsIn(sitting: Sitting, at: Path): string {
  const here = at.join('.')
  const wrong = (sitting.worked()?.problems ?? []).filter(
    ({ path, code, severity }) =>
      severity === 'error' && !isLacking(code) && `${path?.join('.')}.`.startsWith(`${here}.`),
  )
  const called = wrong.map(({ path = [] }) => calledAt(sitting, path).toLowerCase())
  return [...new Set(called)].join(', ')
}

/** What is said of an entry that does not count yet: what it must still say, or what does not fit. */
export function toDoIn(sitting: Sitting, question: ListQuestion, at: Path): string {
  const { list, field } = sitting.said.form.says
  const what = lackingIn(sitting, question, at)
  if (what !== '') return fill(list.lacking, { what })
  const fault = misfitsIn(sitting, at)
  return fault === '' ? '' : fill(field.lookAgain, { fault })
}

/** What an entry of a list must still say before it counts. */
const lackingIn = (sitting: Sitting, { fields }: ListQuestion, at: Path): string =>
  fields
    .filter((q) => q.needed && valueAt(sitting.draft().data, [...at, ...q.inside]) === undefined)
    .map((q) => aboutQuestion(q, sitting.locale().system).label.toLowerCase())
    .join(', ')
