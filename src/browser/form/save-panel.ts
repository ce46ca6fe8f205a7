import { changedLines, type LineChange } from '../../edit/form/changed-lines.ts'
import { draftOf } from '../../edit/form/draft.ts'
import { type Clash, merged } from '../../edit/form/merged.ts'
import { aboutQuestion, questionAt } from '../../edit/form/question.ts'
import type { Value } from '../../edit/written.ts'
import { fill } from '../../model/pattern.ts'
import { button, classed, element } from '../element.ts'
import type { Saved } from './contract.ts'
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
  const question = questionAt(sitting.questions, path)
  const what = question ? aboutQuestion(question, sitting.locale().system).label : path.join(' ')
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
    element('p', saving.changedLead),
    classed('ul', 'clashes', ...clashes.map((clash) => clashItem(sitting, clash))),
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
    dialog.append(
      Object.assign(classed('p', 'fault', fill(saving.failed, { why: result.why })), {
        role: 'alert',
      }),
    )
}

/** Which lines will change, and the way to write them. */
export function savePanel(sitting: Sitting): SavePanel {
  const { saving } = sitting.said.form.says
  const dialog = element('dialog')
  dialog.className = 'saving'
  const open = (then: () => void = () => undefined): void => {
    const changes = changedLines(sitting.saved(), sitting.draft().text)
    const title = element('h2', saving.title)
    title.id = 'saving-title'
    dialog.setAttribute('aria-labelledby', title.id)
    const yes = button(saving.write, () => void write(sitting, dialog, then))
    yes.className = 'strong'
    const no = button(saving.not, () => dialog.close())
    dialog.replaceChildren(
      title,
      element('p', changes.length === 0 ? saving.same : saving.lead),
      classed('ul', 'changes', ...changes.map((change) => changeItem(sitting, change))),
      classed('div', 'buttons', ...(changes.length === 0 ? [no] : [yes, no])),
    )
    dialog.showModal()
  }
  return { node: dialog, open }
}

/** How many lines are not in the file yet. */
export const unsavedLines = (sitting: Sitting): number =>
  draftOf(sitting.saved()).text === sitting.draft().text
    ? 0
    : changedLines(sitting.saved(), sitting.draft().text).reduce(
        (sum, { before, after }) => sum + Math.max(before.length, after.length),
        0,
      )
