import { isLacking } from '../../../edit/form/understood.ts'
import { fill } from '../../../model/pattern.ts'
import { button, classed, element } from '../../element.ts'
import type { Making } from '../contract.ts'
import type { Part } from '../fields/field.ts'
import { calledAt, problemSaid } from '../problem-at.ts'
import { waitingTables } from '../readings/waiting-tables.ts'
import type { SavePanel } from '../save-panel.ts'
import { unsavedLines } from '../saving/changes.ts'
import type { Sitting } from '../sitting.ts'

/** What follows from another answer by itself, and is never asked for alone. */
const silent = ['id', 'paper']

const plainPath = (at: string): readonly string[] =>
  at.split('.').filter((step) => !/^\d+$/.test(step))

function linkTo(
  sitting: Sitting,
  at: string,
  words = calledAt(sitting, plainPath(at)),
): HTMLElement {
  const link = element('a', words)
  link.href = `#at-${at}`
  return element('li', link)
}

/** Whether something stands in for an entry or for one in it, so that it is asked for already. */
const isAbove = (at: string, standIns: readonly string[]): boolean =>
  standIns.some((entry) => entry === at || at === '' || entry.startsWith(`${at}.`))

/** What keeps the manual from being made: what nobody has said, and what does not fit. */
function missing(sitting: Sitting): readonly HTMLElement[] {
  const { result } = sitting.said.form.says
  const worked = sitting.worked()
  const standIns = worked?.standIns ?? []
  const faults = (worked?.problems ?? []).filter(
    ({ severity, code, path = [] }) =>
      severity === 'error' && !(isLacking(code) && isAbove(path.join('.'), standIns)),
  )
  const faulty = faults.map(({ path = [] }) => path.join('.'))
  const needed = standIns.filter((at) => !silent.includes(at) && !faulty.includes(at))
  const lists: HTMLElement[] = []
  if (needed.length > 0)
    lists.push(
      element('p', result.missing),
      element('ul', ...needed.map((at) => linkTo(sitting, at))),
    )
  const late = waitingTables(sitting)
  if (faults.length > 0 || late.length > 0)
    lists.push(
      element('p', result.faults),
      element(
        'ul',
        ...faults.map((problem) =>
          linkTo(sitting, (problem.path ?? []).join('.'), problemSaid(sitting, problem)),
        ),
        ...late.map(({ at, words }) => linkTo(sitting, at, words)),
      ),
      element('p', result.leftOut),
    )
  return lists
}

function shownStep(sitting: Sitting, step: Making, box: HTMLElement): void {
  const { result } = sitting.said.form.says
  if (step.kind === 'stage') box.replaceChildren(element('p', step.text))
  else if (step.kind === 'failed')
    box.replaceChildren(classed('p', 'fault', fill(result.failed, { why: step.why })))
  else {
    const link = classed('a', 'onward', result.open)
    link.href = step.address
    link.target = '_blank'
    box.replaceChildren(element('p', `${result.made} ${step.text}`), link)
    // As if somebody had opened it, where the browser lets a page do so.
    globalThis.open(step.address, '_blank', 'noopener')
  }
}

function maker(sitting: Sitting, panel: SavePanel): { node: HTMLElement; make: HTMLButtonElement } {
  const { result } = sitting.said.form.says
  const progress = classed('div', 'making')
  progress.setAttribute('role', 'status')
  const begin = (): void => {
    make.disabled = true
    progress.replaceChildren(element('p', result.making))
    void sitting.host
      .make(sitting.files(), (step) => shownStep(sitting, step, progress))
      .catch((error: unknown) =>
        shownStep(sitting, { kind: 'failed', why: String(error) }, progress),
      )
      .finally(() => {
        make.disabled = false
      })
  }
  // The program makes what is in the file.
  const make = button(result.make, () =>
    sitting.host.kind === 'program' && unsavedLines(sitting) > 0 ? panel.open(begin) : begin(),
  )
  make.className = 'strong'
  return { node: classed('div', 'make', make, progress), make }
}

/** The last screen: what is missing, making the manual, and the file itself. */
export function resultScreen(sitting: Sitting, panel: SavePanel): Part {
  const { result, frame } = sitting.said.form.says
  const heading = element('h1', result.title)
  heading.tabIndex = -1
  const state = classed('div', 'state')
  const making = maker(sitting, panel)
  const file = element('code')
  const text = classed('pre', 'file', file)
  text.tabIndex = 0
  const refresh = (): void => {
    file.textContent = sitting.draft().text
    const lists = missing(sitting)
    making.make.hidden = lists.length > 0
    state.replaceChildren(
      ...(sitting.worked() === undefined
        ? [element('p', frame.working)]
        : lists.length > 0
          ? lists
          : [classed('p', 'lead', result.ready)]),
    )
  }
  refresh()
  const details = element(
    'details',
    element('summary', result.file),
    element('p', result.fileAbout),
    text,
  )
  return { node: classed('div', 'screen result', heading, state, making.node, details), refresh }
}
