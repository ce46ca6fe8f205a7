import { isAnswered } from '../../../edit/form/progress.ts'
import { classed, element } from '../../element.ts'
import type { Part } from '../fields/field.ts'
import type { Sitting } from '../sitting.ts'

function door(href: string, title: string, about: string): HTMLElement {
  const link = classed('a', 'door', element('strong', title), element('span', about))
  link.href = href
  return link
}

/** The way on: to the first question, or to the first that has no answer yet. */
function begin(sitting: Sitting): HTMLElement {
  const { start } = sitting.said.form.says
  const { first } = sitting.said.form
  const { data } = sitting.draft()
  const isFresh = !first.some((question) => isAnswered(data, question))
  const open = first.find(
    (question) => !isAnswered(data, question) && !sitting.notYet.has(question.id),
  )
  if (isFresh) return door(`#${first[0]?.subject}`, start.begin, start.beginAbout)
  return door(open ? `#first-${open.id}` : '#result', start.goOn, start.goOnAbout)
}

/** What the form is, its first questions, and where the answers go. */
export function startScreen(sitting: Sitting): Part {
  const { start } = sitting.said.form.says
  const { first } = sitting.said.form
  const heading = element('h1', start.title)
  heading.tabIndex = -1
  const questions = first.map(({ id, ask }) => {
    const link = element('a', ask)
    link.href = `#first-${id}`
    return element('li', link)
  })
  const helpers = [start.whoDispatch, start.whoSurvey, start.whoSuperintendent]
  const node = classed(
    'div',
    'screen opening',
    heading,
    classed('p', 'lead', start.lead),
    begin(sitting),
    classed(
      'div',
      'columns',
      element('section', element('h2', start.questions), classed('ol', 'twelve', ...questions)),
      element(
        'section',
        element('h2', start.where),
        element('p', start.whereText),
        element('h2', start.who),
        element('ul', ...helpers.map((words) => element('li', words))),
        element('p', start.whoSubjects),
      ),
    ),
  )
  return { node, refresh: () => undefined }
}
