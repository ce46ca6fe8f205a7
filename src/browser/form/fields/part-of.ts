import type { Question } from '../../../edit/form/question.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { listOf } from '../lists/list.ts'
import type { Sitting } from '../sitting.ts'
import { fieldOf, type Part, type Put } from './field.ts'
import { sharesOf } from './shares.ts'

/** A question as it stands in the page, whatever its kind. */
export function partOf(sitting: Sitting, question: Question, more: Partial<Put> = {}): Part {
  const at: Path = more.at ?? question.path
  if (question.kind === 'list')
    return listOf(sitting, question, at, (q, inner) => partOf(sitting, q, { at: inner }))
  if (question.kind === 'shares') return sharesOf(sitting, question, at)
  return fieldOf(sitting, { question, at, ...more })
}
