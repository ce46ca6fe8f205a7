import { groupsAt } from '../../../edit/form/data.ts'
import { emptyTable, kindOfReading, type ReadingName } from '../../../edit/readings/table.ts'
import { surveyFiles } from '../../../model/survey.ts'
import { button, classed, element } from '../../element.ts'
import { boxesControl, newId } from '../controls.ts'
import { openEntry } from '../lists/open-entry.ts'
import type { Sitting } from '../sitting.ts'
import { showDay } from './grid-state.ts'
import { todayHere } from './readings-part.ts'

const names: Readonly<Record<string, ReadingName>> = {
  depth: 'depth',
  level: 'level',
  staff: 'staff reading',
}

function field(words: string, type: string) {
  const input = element('input')
  input.id = newId()
  input.type = type
  input.autocomplete = 'off'
  const label = element('label', words)
  label.htmlFor = input.id
  return { input, node: classed('div', 'field', label, input) }
}

/** Opens the table of some readings, and makes it where there is none yet. */
function open(sitting: Sitting, name: ReadingName, by: string, date: string): void {
  const of = kindOfReading(name)
  const file = surveyFiles[of]
  const { data, tables } = sitting.draft()
  const list = groupsAt(data, ['surveys'])
  const there = list.findIndex((entry) => entry['file'] === file)
  const text = tables.get(file) ?? emptyTable(name, sitting.locale().system)
  showDay(file, date)
  openEntry(['surveys'], there === -1 ? list.length : there)
  const entry = { path: ['surveys', list.length], value: { of, file, by } }
  sitting.putTable({ name: file, text }, there === -1 ? [entry] : [], '')
  sitting.reshape()
  document.querySelector<HTMLElement>('.readings tbody td input')?.focus()
}

/** Where somebody begins to type readings in: of what, by whom, on which day. */
export function beginReadings(sitting: Sitting): HTMLElement {
  const { readings } = sitting.said.form.says
  const what = boxesControl(
    (['depth', 'level', 'staff'] as const).map((value) => ({ value, said: readings.what[value] })),
    'radio',
  )
  what.show('depth')
  const by = field(readings.by, 'text')
  const day = field(readings.day, 'date')
  day.input.value = todayHere()
  const lacks = classed('p', 'fault')
  lacks.setAttribute('role', 'alert')
  lacks.hidden = true
  const go = button(readings.go, () => {
    const [who, date] = [by.input.value.trim(), day.input.value]
    const missing = [by.input, day.input].find((input) => input.value.trim() === '')
    lacks.textContent = missing ? readings.lacking : ''
    lacks.hidden = missing === undefined
    missing?.focus()
    const name = names[what.read()]
    if (missing === undefined && name !== undefined) open(sitting, name, who, date)
  })
  return classed(
    'details',
    'start-machine',
    element('summary', readings.begin),
    classed('fieldset', 'field', element('legend', readings.beginWhat), what.node),
    classed('div', 'fields', by.node, day.node),
    lacks,
    go,
  )
}
