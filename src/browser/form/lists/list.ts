import { groupsAt } from '../../../edit/form/data.ts'
import { reordered } from '../../../edit/form/draft.ts'
import type { Question, QuestionKind } from '../../../edit/form/question.ts'
import { fill } from '../../../model/pattern.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { button, classed, element } from '../../element.ts'
import type { Part } from '../fields/field.ts'
import { beginReadings } from '../readings/begin.ts'
import { readingsPart } from '../readings/readings-part.ts'
import type { Sitting } from '../sitting.ts'
import { toDoIn } from './lacking.ts'
import { machineStart } from './machine.ts'
import { nextDay } from './next-day.ts'
import { openEntry, openEntryOf } from './open-entry.ts'
import { orderedFields } from './ordered-fields.ts'
import { summaryOf } from './summary.ts'

export type ListQuestion = Question & Extract<QuestionKind, { kind: 'list' }>
type Make = (question: Question, at: Path) => Part

/** A list of groups with what makes its parts. */
type ListAsked = {
  readonly sitting: Sitting
  readonly question: ListQuestion
  readonly at: Path
  readonly make: Make
}

/** An entry of the list opens, or closes where it was open. */
function toggle({ sitting, at }: ListAsked, index: number | undefined): void {
  openEntry(at, index)
  sitting.reshape()
}

function remove({ sitting, at }: ListAsked, index: number): void {
  openEntry(at, undefined)
  sitting.answer([{ path: [...at, index], value: undefined }], '')
  sitting.reshape()
}

function move({ sitting, at }: ListAsked, index: number, by: 1 | -1): void {
  if (openEntryOf(at) === index) openEntry(at, index + by)
  sitting.take(reordered(sitting.draft(), at, index, index + by))
}

/** The questions of an open entry; those that are asked later stand folded. */
function fields(asked: ListAsked, index: number): { node: HTMLElement; parts: readonly Part[] } {
  const { sitting, question, at, make } = asked
  const { list } = sitting.said.form.says
  const { now, later } = orderedFields(sitting, question, index)
  const partsOf = (questions: readonly Question[]): readonly Part[] =>
    questions.map((q) => make(q, [...at, index, ...q.inside]))
  const [first, rest] = [partsOf(now), partsOf(later)]
  const node = classed('div', 'fields', ...first.map((p) => p.node))
  if (rest.length > 0)
    node.append(
      classed(
        'details',
        'more',
        element('summary', list.machineMore),
        classed('div', 'fields', ...rest.map((p) => p.node)),
      ),
    )
  return { node, parts: [...first, ...rest] }
}

/** Buttons of one entry; what they do to which is said to whoever hears them. */
function buttons(asked: ListAsked, index: number, count: number, called: string): HTMLElement {
  const { list } = asked.sitting.said.form.says
  const labelled = (short: string, pattern: typeof list.up, act: () => void): HTMLButtonElement => {
    const made = button(short, act)
    made.setAttribute('aria-label', fill(pattern, { what: called }))
    made.title = fill(pattern, { what: called })
    return made
  }
  const up = labelled('↑', list.up, () => move(asked, index, -1))
  const down = labelled('↓', list.down, () => move(asked, index, 1))
  up.disabled = index === 0
  down.disabled = index === count - 1
  const out = button(fill(list.remove, { what: '' }).trim(), () => remove(asked, index))
  out.setAttribute('aria-label', fill(list.remove, { what: called }))
  return classed('div', 'buttons', up, down, out)
}

/** One entry: what it says in a line, and its questions where it is open. */
function entry(asked: ListAsked, index: number, count: number): Part {
  const { sitting, question, at } = asked
  const { list } = sitting.said.form.says
  const isOpen = openEntryOf(at) === index
  const { title, about } = summaryOf(sitting, question, [...at, index])
  const called = title === '' ? list.fresh : title
  const head = button('', () => toggle(asked, isOpen ? undefined : index))
  head.className = 'entry-head'
  head.setAttribute('aria-expanded', String(isOpen))
  head.append(classed('strong', 'entry-title', called), classed('span', 'entry-about', about))
  const lacks = classed('span', 'entry-lacks')
  const say = (): void => {
    lacks.textContent = toDoIn(sitting, question, [...at, index])
    lacks.hidden = lacks.textContent === '' || index >= groupsAt(sitting.draft().data, at).length
  }
  say()
  head.append(lacks)
  const node = classed('li', isOpen ? 'entry open' : 'entry', head)
  node.dataset['at'] = [...at, index].join('.')
  if (!isOpen) return { node, refresh: say }
  const inside = fields(asked, index)
  const close = button(list.close, () => toggle(asked, undefined))
  close.className = 'close'
  const foot = classed('div', 'entry-foot', close)
  if (index < count) foot.append(buttons(asked, index, count, called))
  const readings =
    question.path.join('.') === 'surveys' ? readingsPart(sitting, [...at, index]) : undefined
  node.append(inside.node, ...(readings ? [readings.node] : []), foot)
  const refresh = (): void => {
    for (const part of inside.parts) part.refresh()
    readings?.refresh()
    const now = summaryOf(sitting, question, [...at, index])
    const words = head.querySelector('.entry-title')
    if (words) words.textContent = now.title === '' ? list.fresh : now.title
    say()
  }
  return { node, refresh }
}

/** A list with its entries and a way to add one. */
export function listOf(sitting: Sitting, question: ListQuestion, at: Path, make: Make): Part {
  const asked = { sitting, question, at, make }
  const { list, entries } = sitting.said.form.says
  const count = groupsAt(sitting.draft().data, at).length
  const isFresh = openEntryOf(at) === count
  const parts = Array.from({ length: count + (isFresh ? 1 : 0) }, (_x, i) => entry(asked, i, count))
  const what = entries[question.path.join('.')] ?? ''
  const isMachines = question.path.join('.') === 'equipment'
  const node = classed('div', 'list')
  node.dataset['at'] = at.join('.')
  node.append(
    parts.length > 0
      ? classed('ol', 'entries', ...parts.map((p) => p.node))
      : classed('p', 'none', list.none),
  )
  if (question.path.join('.') === 'surveys') node.append(beginReadings(sitting))
  if (isMachines) node.append(machineStart(sitting, count))
  else if (!isFresh) {
    const add = button(fill(list.add, { what }), () => toggle(asked, count))
    add.className = 'add'
    node.append(classed('div', 'adds', add, ...nextDay(sitting, question, at, count)))
  }
  return {
    node,
    refresh: () => {
      for (const part of parts) part.refresh()
    },
  }
}
