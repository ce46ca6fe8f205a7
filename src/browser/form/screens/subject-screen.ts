import { isSaid } from '../../../edit/form/progress.ts'
import type { Question } from '../../../edit/form/question.ts'
import type { Screen } from '../../../edit/form/subjects.ts'
import { entryAbout } from '../../../model/entry-about.ts'
import { fill } from '../../../model/pattern.ts'
import { classed, element } from '../../element.ts'
import type { Part } from '../fields/field.ts'
import { partOf } from '../fields/part-of.ts'
import { problemAt } from '../problem-at.ts'
import type { Sitting } from '../sitting.ts'
import { firstQuestion } from './first-question.ts'

type Group = {
  readonly at: readonly string[]
  readonly title: string | undefined
  readonly questions: readonly Question[]
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Questions of one group of the file stand together, below what the group is called. */
function groupsOf(questions: readonly Question[]): readonly Group[] {
  const groups = new Map<string, Question[]>()
  for (const question of questions) {
    const at = question.path.slice(0, question.kind === 'list' ? undefined : -1).join('.')
    groups.set(at, [...(groups.get(at) ?? []), question])
  }
  return [...groups].map(([at, of]) => {
    const label = at === '' ? undefined : entryAbout(at.split('.'))?.label
    return { at: at.split('.'), title: label && sentence(label), questions: of }
  })
}

function groupPart(sitting: Sitting, { at, title, questions }: Group, isAlone: boolean): Part {
  const parts = questions.map((question) => partOf(sitting, question))
  const isList = questions.some((q) => q.kind === 'list')
  const node = classed('section', isList ? 'group of-list' : 'group')
  if (title !== undefined && !isAlone) node.append(element('h2', title))
  const fault = classed('p', 'fault')
  node.append(
    fault,
    classed('div', isList ? 'listed' : 'fields', ...parts.map((part) => part.node)),
  )
  const refresh = (): void => {
    for (const part of parts) part.refresh()
    const found = problemAt(sitting, at)
    fault.textContent = found ? fill(sitting.said.form.says.field.lookAgain, { fault: found }) : ''
    fault.hidden = found === undefined
  }
  refresh()
  return { node, refresh }
}

/** More questions than these are folded away, group by group. */
const mostOpen = 30

function folded(sitting: Sitting, group: Group): Part {
  const part = groupPart(sitting, group, true)
  const node = classed('details', 'fold', element('summary', group.title ?? ''), part.node)
  node.open = group.questions.some((q) => isSaid(sitting.draft().data, q))
  return { node, refresh: part.refresh }
}

/** All questions of a subject that do not come first. */
function morePart(sitting: Sitting, { first, more }: Screen): readonly Part[] {
  const groups = groupsOf(more)
  if (groups.length === 0) return []
  const isLong = more.length > mostOpen
  const parts = groups.map((group) =>
    isLong && group.title !== undefined
      ? folded(sitting, group)
      : groupPart(sitting, group, groups.length === 1 && first.length === 0),
  )
  if (first.length === 0) return parts
  const { field } = sitting.said.form.says
  const node = classed(
    'details',
    'more',
    element('summary', field.more, ' ', classed('span', 'soft', field.moreHint)),
    ...parts.map((part) => part.node),
  )
  node.open = more.some((q) => isSaid(sitting.draft().data, q))
  return [
    {
      node,
      refresh: () => {
        for (const part of parts) part.refresh()
      },
    },
  ]
}

/** One subject: what comes first, then everything else about it. */
export function subjectScreen(sitting: Sitting, screen: Screen): Part {
  const { subject, first } = screen
  const parts = [
    ...first.map(({ number, question }) => firstQuestion(sitting, number, question)),
    ...morePart(sitting, screen),
  ]
  const heading = element('h1', subject.title)
  heading.tabIndex = -1
  const next = sitting.screens[sitting.screens.indexOf(screen) + 1]
  const { frame } = sitting.said.form.says
  const onward = element(
    'a',
    next ? fill(frame.next, { subject: next.subject.title }) : frame.result,
  )
  onward.href = `#${next?.subject.id ?? 'result'}`
  onward.className = 'onward'
  return {
    node: classed(
      'div',
      'screen',
      heading,
      classed('p', 'lead', subject.lead),
      ...parts.map((part) => part.node),
      classed('p', '', onward),
    ),
    refresh: () => {
      for (const part of parts) part.refresh()
    },
  }
}
