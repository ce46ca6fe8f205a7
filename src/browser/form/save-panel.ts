import { changedAnswers } from '../../edit/form/changed-answers.ts'
import { changedLines, type LineChange } from '../../edit/form/changed-lines.ts'
import { draftOf } from '../../edit/form/draft.ts'
import { type Clash, merged } from '../../edit/form/merged.ts'
import { isLacking } from '../../edit/form/understood.ts'
import type { Value } from '../../edit/written.ts'
import { fill } from '../../model/pattern.ts'
import { button, classed, element } from '../element.ts'
import type { Saved } from './contract.ts'
import { calledAt, problemSaid } from './problem-at.ts'
import { screenFor } from './screen-for.ts'
import type { Sitting } from './sitting.ts'

function linesOf(head: string, lines: readonly string[], name: string): readonly HTMLElement[] {
  if (lines.length === 0) return []
  return [classed('p', 'soft', head), classed('pre', name, element('code', lines.join('\n')))]
}

function changeItem(sitting: Sitting, { line, before, after }: LineChange): HTMLElement {
  const { saving } = sitting.said.form.says
  return element(
    'li',
    classed('strong', '', fill(saving.line, { number: line })),
    ...linesOf(saving.gone, before, 'before'),
    ...linesOf(saving.now, after, 'after'),
  )
}

const saidOf = (value: unknown, nothing: string): string =>
  value === undefined ? nothing : typeof value === 'object' ? JSON.stringify(value) : String(value)

/** An entry that both sides have changed, with a choice between the two. */
function clashItem(sitting: Sitting, { path, mine, theirs }: Clash): HTMLElement {
  const { saving } = sitting.said.form.says
  const what = calledAt(sitting, path)
  const item = element('li', element('p', fill(saving.clash, { what })))
  const take = button(saving.takeMine, () => {
    sitting.answer([{ path, value: mine as Value | undefined }], '')
    sitting.reshape()
    item.remove()
  })
  const leave = button(saving.takeTheirs, () => item.remove())
  item.append(
    element('p', fill(saving.mine, { value: saidOf(mine, saving.nothing) })),
    element('p', fill(saving.theirs, { value: saidOf(theirs, saving.nothing) })),
    classed('div', 'buttons', take, leave),
  )
  return item
}

/** What is shown before the file is written, and what came of it. */
export type SavePanel = {
  readonly node: HTMLDialogElement
  readonly open: (then?: () => void) => void
}

/** The file is another one meanwhile: the answers are put into it, and what clashes is asked. */
function changedElsewhere(sitting: Sitting, dialog: HTMLDialogElement, theirs: string): void {
  const { saving } = sitting.said.form.says
  const { draft, clashes } = merged(sitting.saved(), sitting.draft().text, theirs)
  sitting.keepSaved(theirs)
  sitting.take({ ok: true, draft: { ...draft, steps: [] } })
  const close = button(saving.not, () => dialog.close())
  dialog.replaceChildren(
    element('h2', saving.changed),
    classed(
      'div',
      'told',
      element('p', saving.changedLead),
      classed('ul', 'clashes', ...clashes.map((clash) => clashItem(sitting, clash))),
    ),
    classed('div', 'buttons', close),
  )
}

async function write(sitting: Sitting, dialog: HTMLDialogElement, then: () => void): Promise<void> {
  const { saving } = sitting.said.form.says
  const { text } = sitting.draft()
  const result: Saved = await sitting.host.save(text)
  if (result.kind === 'saved') {
    sitting.keepSaved(text)
    dialog.close()
    then()
  } else if (result.kind === 'changed') changedElsewhere(sitting, dialog, result.text)
  else
    dialog.querySelector('.told')?.append(
      Object.assign(classed('p', 'fault', fill(saving.failed, { why: result.why })), {
        role: 'alert',
      }),
    )
}

/** What follows from other answers, or is chosen with an entry of a list: nobody has answered it alone. */
const silent = /^(?:id|paper|equipment\.\d+\.id|contacts\.\d+\.role)$/

/** The answers that are new or changed, counted and named below their subjects. */
function answersSaid(sitting: Sitting): readonly HTMLElement[] {
  const { saving } = sitting.said.form.says
  const before = draftOf(sitting.saved()).data
  const paths = changedAnswers(before, sitting.draft().data).filter(
    (path) => !silent.test(path.join('.')),
  )
  const bySubject = new Map<string, Set<string>>()
  for (const path of paths) {
    const title = screenFor(sitting, path.join('.'))?.subject.title ?? ''
    bySubject.set(title, (bySubject.get(title) ?? new Set()).add(calledAt(sitting, path)))
  }
  if (paths.length === 0) return []
  const count = paths.length === 1 ? saving.one : fill(saving.several, { count: paths.length })
  return [
    element('p', count),
    classed(
      'ul',
      'answers',
      ...[...bySubject].map(([title, labels]) =>
        element('li', element('strong', title), element('span', [...labels].join(', '))),
      ),
    ),
  ]
}

/** What is faulty in the answers, each with the way to its question; what is missing is no fault here. */
function faultsSaid(sitting: Sitting, dialog: HTMLDialogElement): readonly HTMLElement[] {
  const { saving } = sitting.said.form.says
  const problems = sitting.worked()?.problems ?? []
  const found = problems.filter(
    ({ severity, code, path = [] }) => severity === 'error' && path.length > 0 && !isLacking(code),
  )
  if (found.length === 0) return []
  const items = found.map((problem) => {
    const at = (problem.path ?? []).join('.')
    const link = element(
      'a',
      `${calledAt(sitting, problem.path ?? [])}: ${problemSaid(sitting, problem)}`,
    )
    link.href = `#at-${at}`
    link.addEventListener('click', () => dialog.close())
    return element('li', link)
  })
  const many = fill(saving.misfits, { count: found.length })
  return [
    classed('p', 'fault', found.length === 1 ? saving.misfit : many),
    classed('ul', 'misfits', ...items),
  ]
}

/** The lines themselves, for whoever reads files. */
function linesFold(sitting: Sitting, changes: readonly LineChange[]): HTMLElement {
  const { saving } = sitting.said.form.says
  const isNew = isNewFile(sitting)
  return classed(
    'details',
    'lines',
    element('summary', saving.showLines),
    ...(isNew
      ? [classed('pre', 'after', element('code', sitting.draft().text))]
      : [
          element('p', saving.lead),
          classed('ul', 'changes', ...changes.map((change) => changeItem(sitting, change))),
        ]),
  )
}

/** Which answers will be written, and the way to write them. */
export function savePanel(sitting: Sitting): SavePanel {
  const { saving } = sitting.said.form.says
  const dialog = element('dialog')
  dialog.className = 'saving'
  const open = (then: () => void = () => undefined): void => {
    const changes = changedLines(sitting.saved(), sitting.draft().text)
    const title = element('h2', isNewFile(sitting) ? saving.newFile : saving.title)
    title.tabIndex = -1
    title.id = 'saving-title'
    dialog.setAttribute('aria-labelledby', title.id)
    const yes = button(saving.write, () => void write(sitting, dialog, then))
    yes.className = 'strong'
    const no = button(saving.not, () => dialog.close())
    dialog.replaceChildren(
      title,
      classed(
        'div',
        'told',
        ...(changes.length === 0
          ? [element('p', saving.same)]
          : [...answersSaid(sitting), ...faultsSaid(sitting, dialog), linesFold(sitting, changes)]),
      ),
      classed('div', 'buttons', ...(changes.length === 0 ? [no] : [yes, no])),
    )
    dialog.showModal()
    title.focus()
    dialog.scrollTop = 0
  }
  return { node: dialog, open }
}

/** Whether nothing has been written yet, so that there is no file. */
export const isNewFile = (sitting: Sitting): boolean => !sitting.isOnDisk()

/** How many lines are not in the file yet. */
export const unsavedLines = (sitting: Sitting): number =>
  draftOf(sitting.saved()).text === sitting.draft().text
    ? 0
    : changedLines(sitting.saved(), sitting.draft().text).reduce(
        (sum, { before, after }) => sum + Math.max(before.length, after.length),
        0,
      )
