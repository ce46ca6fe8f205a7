import { type Clash, merged } from '../../../edit/form/merged.ts'
import { mergedTable, type ReadingClash } from '../../../edit/readings/merged-table.ts'
import type { Value } from '../../../edit/written.ts'
import { facilityFile } from '../../../model/form-exchange.ts'
import { fill } from '../../../model/pattern.ts'
import { button, classed, element } from '../../element.ts'
import type { Saved } from '../contract.ts'
import { calledAt } from '../problem-at.ts'
import { putReading, spotSaid } from '../readings/spot.ts'
import type { Sitting } from '../sitting.ts'

const saidOf = (value: unknown, nothing: string): string =>
  value === undefined ? nothing : typeof value === 'object' ? JSON.stringify(value) : String(value)

/** Something that both sides have changed, with a choice between the two. */
function choiceOf(
  sitting: Sitting,
  { what, mine, theirs }: { what: string; mine: unknown; theirs: unknown },
  takeMine: () => void,
): HTMLElement {
  const { saving } = sitting.said.form.says
  const item = element('li', element('p', fill(saving.clash, { what })))
  const take = button(saving.takeMine, () => {
    takeMine()
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

const clashItem = (sitting: Sitting, { path, mine, theirs }: Clash): HTMLElement =>
  choiceOf(sitting, { what: calledAt(sitting, path), mine, theirs }, () =>
    sitting.answer([{ path, value: mine as Value | undefined }], ''),
  )

const readingClash = (sitting: Sitting, name: string, clash: ReadingClash): HTMLElement =>
  choiceOf(sitting, { ...clash, what: spotSaid(sitting, clash.spot) }, () =>
    putReading(sitting, name, clash.spot, clash.mine),
  )

type ChangedElsewhere = Extract<Saved, { readonly kind: 'changed' }>

/** The file of the fair is another one meanwhile: the answers are put into it. */
function fileElsewhere(sitting: Sitting, dialog: HTMLDialogElement, theirs: string): void {
  const { draft, clashes } = merged(sitting.saved(), sitting.draft().text, theirs)
  sitting.keepSaved(new Map([[facilityFile, theirs]]))
  sitting.take({ ok: true, draft: { ...draft, tables: sitting.draft().tables } })
  askAbout(
    sitting,
    dialog,
    clashes.map((clash) => clashItem(sitting, clash)),
  )
}

/** The same of a table of readings. */
function tableElsewhere(sitting: Sitting, dialog: HTMLDialogElement, now: ChangedElsewhere): void {
  const { file: name, text: theirs } = now
  const mine = sitting.draft().tables.get(name) ?? ''
  const base = sitting.savedTables().get(name) ?? ''
  const made = mergedTable({ base, mine, theirs }, sitting.locale().system)
  sitting.keepSaved(new Map([[name, theirs]]))
  const tables = new Map([...sitting.draft().tables, [name, made?.text ?? mine]])
  sitting.take({ ok: true, draft: { ...sitting.draft(), tables, steps: [], ahead: [] } })
  const items = (made?.clashes ?? []).map((clash) => readingClash(sitting, name, clash))
  askAbout(sitting, dialog, items)
}

/** What has changed meanwhile is told, and what both sides have changed is asked. */
function askAbout(
  sitting: Sitting,
  dialog: HTMLDialogElement,
  clashes: readonly HTMLElement[],
): void {
  const { saving } = sitting.said.form.says
  const close = button(saving.not, () => dialog.close())
  dialog.replaceChildren(
    element('h2', saving.changed),
    classed('div', 'told', element('p', saving.changedLead), classed('ul', 'clashes', ...clashes)),
    classed('div', 'buttons', close),
  )
}

/** A file is another one meanwhile: what was typed is put into it, and what clashes is asked. */
export function changedElsewhere(
  sitting: Sitting,
  dialog: HTMLDialogElement,
  now: ChangedElsewhere,
): void {
  if (now.file === facilityFile) fileElsewhere(sitting, dialog, now.text)
  else tableElsewhere(sitting, dialog, now)
}
