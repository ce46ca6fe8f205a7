import {
  answerChanges,
  contactBack,
  contactWith,
  personChanges,
} from '../../../edit/form/answers.ts'
import { groupsAt } from '../../../edit/form/data.ts'
import { isAnswered } from '../../../edit/form/progress.ts'
import { type Question, questionAt } from '../../../edit/form/question.ts'
import type { Change } from '../../../edit/splice.ts'
import { fill } from '../../../model/pattern.ts'
import type { FirstQuestion } from '../../../validate/schemas/form.ts'
import { classed, element } from '../../element.ts'
import { newId } from '../controls.ts'
import type { Part } from '../fields/field.ts'
import { partOf } from '../fields/part-of.ts'
import { personOf } from '../fields/person.ts'
import type { Sitting } from '../sitting.ts'

const entriesOf = (sitting: Sitting, { entries = [] }: FirstQuestion): readonly Question[] =>
  entries.flatMap((at) => questionAt(sitting.questions, at.split('.')) ?? [])

/** The answer fields of a question. */
function answersOf(sitting: Sitting, asked: FirstQuestion): readonly Part[] {
  const { person } = asked
  const until = (): string => (sitting.notYet.has(asked.id) ? (asked.until ?? '') : '')
  const entries = entriesOf(sitting, asked)
  const unknown =
    asked.until === undefined ? undefined : (step: string) => tick(sitting, asked, step)
  if (person !== undefined)
    return [
      personOf(sitting, {
        id: asked.id,
        role: person,
        stops: entries.length > 0,
        until,
        unknown,
      }),
    ]
  const isOne = entries.length === 1
  return entries.map((question, i) =>
    partOf(sitting, question, {
      ...(isOne ? { label: asked.ask, isAsked: true } : {}),
      howTo: '',
      unknown,
      until: () => (i === entries.length - 1 ? until() : ''),
    }),
  )
}

/** Changes that take the answer to a question out of the file. */
function cleared(sitting: Sitting, asked: FirstQuestion): readonly Change[] {
  const { data } = sitting.draft()
  const entries = entriesOf(sitting, asked)
  if (asked.person !== undefined) {
    const stops = entries.length > 0
    // Without a name nothing is left to be called, so the contact goes as a whole.
    const named = personChanges(data, asked.person, 'name', undefined, stops)
    const whole = named.map(({ path, value }) =>
      path[0] === 'contacts' ? { path: path.slice(0, 2), value } : { path, value },
    )
    return whole
  }
  return entries.flatMap(({ path }) => answerChanges(data, path, undefined))
}

/** "Nobody knows it yet": what cannot stand in the file without the rest is left out and kept. */
function tick(sitting: Sitting, asked: FirstQuestion, step = ''): void {
  const { data } = sitting.draft()
  const index = asked.person === undefined ? undefined : contactWith(data, asked.person)
  const contact = groupsAt(data, ['contacts'])[index ?? -1]
  if (!sitting.notYet.has(asked.id)) sitting.notYet.keep(asked.id, contact ?? {})
  sitting.notYet.put(asked.id, true)
  sitting.answer(cleared(sitting, asked), step)
  sitting.settle()
  sitting.reshape()
}

/** The box taken back: what was kept stands in the file again. */
function untick(sitting: Sitting, asked: FirstQuestion): void {
  const { person, id } = asked
  const { data } = sitting.draft()
  const kept = sitting.notYet.kept(id)
  sitting.notYet.put(id, false)
  sitting.notYet.keep(id, {})
  const isKept = kept['name'] !== undefined || kept['phone'] !== undefined
  if (person !== undefined && isKept && contactWith(data, person) === undefined)
    sitting.answer(contactBack(data, person, kept, entriesOf(sitting, asked).length > 0), '')
  sitting.reshape()
}

/** Whether something of the answer stands in the file: a step back has brought it there. */
function isBegun(sitting: Sitting, asked: FirstQuestion): boolean {
  const { data } = sitting.draft()
  return (
    isAnswered(data, asked) ||
    (asked.person !== undefined && contactWith(data, asked.person) !== undefined)
  )
}

/** "Nobody knows it yet" is an answer like any other. */
function notYetBox(sitting: Sitting, asked: FirstQuestion): Part {
  const { field } = sitting.said.form.says
  const isMeasured = entriesOf(sitting, asked).some((q) => q.kind === 'quantity')
  const words = isMeasured ? field.notMeasured : field.notKnown
  const box = element('input')
  const node = classed('label', 'box not-yet', box, element('span', words))
  box.type = 'checkbox'
  box.id = newId()
  box.addEventListener('change', () => {
    if (box.checked) tick(sitting, asked)
    else untick(sitting, asked)
  })
  const about = classed('p', 'until taken', field.leftOut)
  about.setAttribute('role', 'status')
  const refresh = (): void => {
    if (isBegun(sitting, asked)) sitting.notYet.put(asked.id, false)
    box.checked = sitting.notYet.has(asked.id)
    node.hidden = isAnswered(sitting.draft().data, asked)
    about.hidden = !box.checked || asked.person !== undefined
  }
  refresh()
  return { node: classed('div', 'not-known', node, about), refresh }
}

/** One of the questions that come first: number, question, answer, how to find out, and why. */
export function firstQuestion(sitting: Sitting, number: number, asked: FirstQuestion): Part {
  const { field } = sitting.said.form.says
  const answers = answersOf(sitting, asked)
  const box = asked.until === undefined ? undefined : notYetBox(sitting, asked)
  const title = element('h2', asked.ask)
  title.id = newId()
  const node = classed(
    'section',
    'question',
    classed('span', 'no', String(number)),
    classed(
      'div',
      'asked',
      title,
      ...answers.map((part) => part.node),
      ...(box ? [box.node] : []),
      classed('p', 'how', asked.how),
      classed('p', 'why', fill(field.why, { why: asked.why })),
    ),
  )
  node.setAttribute('aria-labelledby', title.id)
  node.dataset['first'] = asked.id
  return {
    node,
    refresh: () => {
      for (const part of answers) part.refresh()
      box?.refresh()
    },
  }
}
