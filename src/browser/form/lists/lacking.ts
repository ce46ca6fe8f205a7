import { valueAt } from '../../../edit/form/data.ts'
import { aboutQuestion } from '../../../edit/form/question.ts'
import type { Path } from '../../../read/read-yaml.ts'
import type { Sitting } from '../sitting.ts'
import type { ListQuestion } from './list.ts'

/** What an entry of a list must still say before it counts. */
export const lackingIn = (sitting: Sitting, { fields }: ListQuestion, at: Path): string =>
  fields
    .filter((q) => q.needed && valueAt(sitting.draft().data, [...at, ...q.inside]) === undefined)
    .map((q) => aboutQuestion(q, sitting.locale().system).label.toLowerCase())
    .join(', ')
