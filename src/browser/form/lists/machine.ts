import { folderName } from '../../../edit/form/answers.ts'
import { groupsAt } from '../../../edit/form/data.ts'
import { type Question, questionAt } from '../../../edit/form/question.ts'
import { fill } from '../../../model/pattern.ts'
import { button, classed, element } from '../../element.ts'
import { newId } from '../controls.ts'
import { controlOf } from '../fields/control-of.ts'
import type { Sitting } from '../sitting.ts'
import { openEntry } from './open-entry.ts'

/** A short name that no other machine has. */
function freshId(sitting: Sitting, name: string): string {
  const taken = groupsAt(sitting.draft().data, ['equipment']).map((m) => String(m['id']))
  const base = folderName(name.replace(/^the /i, '')) || 'machine'
  const ids = [base, ...taken.map((_id, i) => `${base}-${i + 2}`)]
  return ids.find((id) => !taken.includes(id)) ?? base
}

/** Where a machine is added: what it is called and what it does; its measures are asked for then. */
export function machineStart(sitting: Sitting, count: number): HTMLElement {
  const { list, field } = sitting.said.form.says
  const can = questionAt(sitting.questions, ['equipment', 0, 'can']) as Question
  const works = controlOf(can, '', sitting)
  const name = element('input')
  name.id = newId()
  name.autocomplete = 'off'
  const label = element('label', field.name)
  label.htmlFor = name.id
  const lacks = classed('p', 'fault')
  lacks.setAttribute('role', 'alert')
  lacks.hidden = true
  const add = button(list.machineAdd, () => {
    const chosen = works
      .read()
      .split(' ')
      .filter((work) => work !== '')
    const called = name.value.trim()
    if (called === '' || chosen.length === 0) {
      lacks.textContent = called === '' ? list.machineNoName : list.machineNoWork
      lacks.hidden = false
      ;(called === '' ? name : works.inputs[0])?.focus()
      return
    }
    const value = { id: freshId(sitting, called), name: called, can: chosen, from: 'own' }
    openEntry(['equipment'], count)
    sitting.answer([{ path: ['equipment', count], value }], '')
    sitting.reshape()
  })
  const node = classed(
    'details',
    'start-machine',
    element('summary', fill(list.add, { what: list.machine })),
    classed('div', 'field', label, name),
    classed('fieldset', 'field', element('legend', list.machineWhat), works.node),
    lacks,
    add,
  )
  node.open = count === 0
  return node
}
