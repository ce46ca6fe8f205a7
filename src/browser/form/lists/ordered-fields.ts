import { textAt, valueAt } from '../../../edit/form/data.ts'
import type { Question } from '../../../edit/form/question.ts'
import { fieldsFor, worksAt } from '../../../edit/form/stands-in.ts'
import { gearFields } from '../../../model/fact-spec.ts'
import type { Sitting } from '../sitting.ts'
import type { ListQuestion } from './list.ts'

/** Asked of every machine, beside what its works ask for. */
const always = ['name', 'can', 'from']

/** Asked of machines that are lent, for some days. */
const lent = ['owner', 'days']

type Ordered = { readonly now: readonly Question[]; readonly later: readonly Question[] }

/** Of a table that is typed in here only who took the readings: the rest follows from it. */
function fieldsOfTable(sitting: Sitting, { fields }: ListQuestion, index: number): Ordered {
  const file = textAt(sitting.draft().data, ['surveys', index, 'file'])
  const isTyped = file !== undefined && sitting.draft().tables.has(file)
  const isNow = ({ inside }: Question): boolean => !isTyped || inside[0] === 'by'
  return { now: fields.filter(isNow), later: fields.filter((q) => !isNow(q)) }
}

/**
 * The questions of an entry: of a machine those that its works ask for, and what it says already;
 * all others later.
 */
export function orderedFields(sitting: Sitting, question: ListQuestion, index: number): Ordered {
  if (question.path.join('.') === 'surveys') return fieldsOfTable(sitting, question, index)
  if (question.path.join('.') !== 'equipment') return { now: question.fields, later: [] }
  const { data } = sitting.draft()
  const works = fieldsFor(worksAt(data, index), gearFields)
  const from = valueAt(data, ['equipment', index, 'from'])
  const isNow = ({ inside: [name = ''] }: Question): boolean =>
    name !== 'id' &&
    (always.includes(name) ||
      works.includes(name) ||
      (lent.includes(name) && from !== 'own') ||
      valueAt(data, ['equipment', index, name]) !== undefined)
  return {
    now: question.fields.filter(isNow),
    later: question.fields.filter((q) => !isNow(q)),
  }
}
