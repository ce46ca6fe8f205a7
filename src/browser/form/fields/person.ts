import { contactBack, contactWith, personChanges } from '../../../edit/form/answers.ts'
import { valueAt } from '../../../edit/form/data.ts'
import { type Question, questionAt } from '../../../edit/form/question.ts'
import type { Value } from '../../../edit/written.ts'
import { fill } from '../../../model/pattern.ts'
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

/** Who is asked for. */
type PersonAsked = {
  /** The question that asks, under which is kept what stands in no file yet. */
  readonly id: string
  readonly role: ContactRole
  /** Whether the person is asked for as one who may stop racing. */
  readonly stops: boolean
  readonly until: () => string
  readonly unknown: ((step: string) => void) | undefined
}

/** Half an answer of somebody who said that nobody knows the rest: it waits until there is a whole one. */
function keepHalf(
  sitting: Sitting,
  { id, role, stops }: PersonAsked,
  name: 'name' | 'phone',
  said: string | undefined,
): boolean {
  const { [name]: _old, ...rest } = sitting.notYet.kept(id)
  const kept: Readonly<Record<string, unknown>> =
    said === undefined ? rest : { role, ...rest, [name]: said }
  sitting.notYet.keep(id, kept)
  if (kept['name'] === undefined || kept['phone'] === undefined) return true
  sitting.notYet.put(id, false)
  sitting.notYet.keep(id, {})
  return sitting.answer(contactBack(sitting.draft().data, role, kept, stops), `${role}.${name}`)
}

/** What stands below a person: what is lacking, or what is kept and left out meanwhile. */
function lackSaid(sitting: Sitting, { id, role }: PersonAsked): string {
  const { field } = sitting.said.form.says
  const isKept = sitting.notYet.has(id) && contactWith(sitting.draft().data, role) === undefined
  if (!isKept) return lacks(sitting, role)
  const { name, phone } = sitting.notYet.kept(id)
  const what = name ?? phone
  return what === undefined ? field.leftOut : fill(field.keptOut, { what: String(what) })
}

/** Name and telephone of the person with a role, who need not stand among the contacts yet. */
export function personOf(sitting: Sitting, asked: PersonAsked): Part {
  const { field } = sitting.said.form.says
  const { id, role, stops, until, unknown } = asked
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
      kept: () => (sitting.notYet.has(id) ? String(sitting.notYet.kept(id)[name] ?? '') : ''),
      unknown,
      step: `${role}.${name}`,
      write: (value: Value | undefined) => {
        const said = value === undefined ? undefined : String(value)
        const { data } = sitting.draft()
        if (sitting.notYet.has(id) && contactWith(data, role) === undefined)
          return keepHalf(sitting, asked, name, said)
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
    lack.textContent = lackSaid(sitting, asked)
    lack.hidden = lack.textContent === ''
  }
  refresh()
  return {
    node: classed('div', 'person', classed('div', 'fields', ...parts.map((p) => p.node)), lack),
    refresh,
  }
}
