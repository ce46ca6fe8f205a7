import type { Question } from '../../edit/form/question.ts'
import type { Library } from '../../validate/check-library.ts'
import type { FormFile } from '../../validate/schemas/form.ts'
import { months } from '../../validate/schemas/words/calendar.ts'

/** All that the form says. */
export type Said = {
  readonly form: FormFile
  readonly library: Library
}

/** What a choice of a question is called; one without words by itself. */
export function choiceSaid({ form, library }: Said, { path }: Question, choice: string): string {
  const at = path.join('.')
  const { words } = library
  const own = form.choices[at]?.[choice]
  if (own !== undefined) return own
  if (at === 'climate.month') {
    const month = months[Number(choice) - 1]
    return month === undefined ? choice : words.calendar.months[month]
  }
  const named: Readonly<Record<string, string>> =
    at === 'cushion.material' ? words.materials : words.roles
  return named[choice] ?? choice
}
