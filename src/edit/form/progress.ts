import type * as z from 'zod'
import type { Path } from '../../read/read-yaml.ts'
import { schemaAt } from '../../validate/schema-advice/schema-keys.ts'
import { facility } from '../../validate/schemas/facility.ts'
import type { FirstQuestion } from '../../validate/schemas/form.ts'
import { contactWith } from './answers.ts'
import { valueAt } from './data.ts'
import type { Question } from './question.ts'
import type { Screen } from './subjects.ts'

/** What stands at an entry, as far as it can be used: a day that no calendar has is no answer. */
function isSound(data: unknown, at: Path): boolean {
  const value = valueAt(data, at)
  const schema = schemaAt(facility, at) as z.ZodType | undefined
  return value !== undefined && (schema?.safeParse(value).success ?? true)
}

/** Whether one of the questions that come first has its answer in the file. */
export function isAnswered(data: unknown, { entries = [], person }: FirstQuestion): boolean {
  if (person !== undefined) {
    const index = contactWith(data, person)
    return (
      index !== undefined &&
      ['name', 'phone'].every((field) => valueAt(data, ['contacts', index, field]) !== undefined)
    )
  }
  return entries.every((at) => isSound(data, at.split('.')))
}

/** Whether the file says anything to a question. */
export const isSaid = (data: unknown, { path }: Question): boolean =>
  valueAt(data, path) !== undefined

/** How far a screen is: questions that come first, and whether any of the others is answered. */
export function progressOf(
  data: unknown,
  { first, more }: Screen,
  isNotYet: (question: string) => boolean,
): { readonly done: number; readonly all: number; readonly begun: boolean } {
  const done = first.filter(({ question }) => isAnswered(data, question) || isNotYet(question.id))
  return { done: done.length, all: first.length, begun: more.some((q) => isSaid(data, q)) }
}
