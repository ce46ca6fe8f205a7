import { isLacking } from '../../edit/form/understood.ts'
import { fill } from '../../model/pattern.ts'
import { button, classed, element } from '../element.ts'
import type { Saved } from './contract.ts'
import { calledAt, problemSaid } from './problem-at.ts'
import { answersSaid, fileChanges, isNewFile, linesFold, unsaved } from './saving/changes.ts'
import { changedElsewhere } from './saving/elsewhere.ts'
import type { Sitting } from './sitting.ts'

/** What is shown before the file is written, and what came of it. */
export type SavePanel = {
  readonly node: HTMLDialogElement
  readonly open: (then?: () => void) => void
}

async function write(sitting: Sitting, dialog: HTMLDialogElement, then: () => void): Promise<void> {
  const { saving } = sitting.said.form.says
  const files = unsaved(sitting)
  const result: Saved = await sitting.host.save(files)
  if (result.kind === 'saved') {
    sitting.keepSaved(files)
    dialog.close()
    then()
  } else if (result.kind === 'changed') changedElsewhere(sitting, dialog, result)
  else
    dialog.querySelector('.told')?.append(
      Object.assign(classed('p', 'fault', fill(saving.failed, { why: result.why })), {
        role: 'alert',
      }),
    )
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

/** Which answers will be written, and the way to write them. */
export function savePanel(sitting: Sitting): SavePanel {
  const { saving } = sitting.said.form.says
  const dialog = element('dialog')
  dialog.className = 'saving'
  // The keyboard goes back to where it was; a button that cannot be pressed any more would lose it.
  dialog.addEventListener('close', () => {
    if (document.activeElement === document.body)
      document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true })
  })
  const open = (then: () => void = () => undefined): void => {
    const changes = fileChanges(sitting)
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
