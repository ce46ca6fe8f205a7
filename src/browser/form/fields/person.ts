import { contactWith, personChanges } from '../../../edit/form/answers.ts'
import { valueAt } from '../../../edit/form/data.ts'
import { type Question, questionAt } from '../../../edit/form/question.ts'
import type { Value } from '../../../edit/written.ts'
import type { ContactRole } from '../../../validate/schemas/contacts.ts'
import { classed } from '../../element.ts'
import type { Sitting } from '../sitting.ts'
import { fieldOf, type Part } from './field.ts'

/** What a person lacks, so that nobody is reached. */
function lacks(sitting: Sitting, role: ContactRole): string {
  const { field } = sitting.said.form.says
  const { data } = sitting.draft()
  const index = contactWith(data, role)
  if (index === undefined) return ''
  const has = (name: string): boolean => valueAt(data, ['contacts', index, name]) !== undefined
  if (!has('phone')) return field.noPhone
  return has('name') ? '' : field.noName
}

/**
 * Name and telephone of the person with a role, who need not stand among the contacts yet.
 * @param stops Whether the person is asked for as one who may stop racing.
 */
export function personOf(
  sitting: Sitting,
  role: ContactRole,
  stops: boolean,
  until: () => string,
): Part {
  const { field } = sitting.said.form.says
  const place = (): number => contactWith(sitting.draft().data, role) ?? Number.MAX_SAFE_INTEGER
  const parts = (['name', 'phone'] as const).map((name) => {
    const question = questionAt(sitting.questions, ['contacts', 0, name]) as Question
    const part = fieldOf(sitting, {
      question,
      at: ['contacts', place(), name],
      label: field[name],
      howTo: '',
      isPlain: true,
      until: () => (name === 'phone' ? until() : ''),
      write: (value: Value | undefined) => {
        const said = value === undefined ? undefined : String(value)
        const { data } = sitting.draft()
        return sitting.answer(personChanges(data, role, name, said, stops), `${role}.${name}`)
      },
    })
    // The contact may come, go and move meanwhile: the keyboard finds its field by the role.
    part.node.dataset['at'] = `${role}.${name}`
    return part
  })
  const lack = classed('p', 'fault lack')
  const refresh = (): void => {
    for (const part of parts) part.refresh()
    lack.textContent = lacks(sitting, role)
    lack.hidden = lack.textContent === ''
  }
  refresh()
  return {
    node: classed('div', 'person', classed('div', 'fields', ...parts.map((p) => p.node)), lack),
    refresh,
  }
}
