import { measurementChanges } from '../../../edit/form/answers.ts'
import { valueAt } from '../../../edit/form/data.ts'
import { factsStated, measuredAt } from '../../../edit/form/measured.ts'
import type { Question } from '../../../edit/form/question.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { button, classed, element } from '../../element.ts'
import { newId } from '../controls.ts'
import type { Sitting } from '../sitting.ts'
import type { Part } from './field.ts'

function labelled(words: string, type: string): { node: HTMLElement; input: HTMLInputElement } {
  const input = element('input')
  input.id = newId()
  input.type = type
  input.autocomplete = 'off'
  const label = element('label', words)
  label.htmlFor = input.id
  return { node: classed('div', 'field', label, input), input }
}

/** Where somebody says who measured an answer and when, which makes it a measurement of the list. */
export function measureBox(sitting: Sitting, question: Question, at: Path): Part | undefined {
  if (question.kind !== 'quantity') return undefined
  const { field } = sitting.said.form.says
  const day = labelled(field.measureDay, 'date')
  const who = labelled(field.measureWho, 'text')
  const keep = button(field.measureKeep, () => {
    const { data } = sitting.draft()
    const fact = factsStated(data, at)[0]
    const [date, by] = [day.input.value, who.input.value.trim()]
    const missing = [day.input, who.input].find((input) => input.value.trim() === '')
    missing?.focus()
    if (missing || fact === undefined) return
    sitting.answer(measurementChanges(data, fact, at, { date, by }), '')
    sitting.reshape()
  })
  const box = classed(
    'details',
    'measure',
    element('summary', field.measure),
    classed('div', 'fields', day.node, who.node, keep),
  )
  const refresh = (): void => {
    const { data } = sitting.draft()
    box.hidden =
      valueAt(data, at) === undefined ||
      measuredAt(data, at) !== undefined ||
      factsStated(data, at).length === 0
  }
  refresh()
  return { node: box, refresh }
}
