import { changedAnswers } from '../../../edit/form/changed-answers.ts'
import { changedLines, type LineChange } from '../../../edit/form/changed-lines.ts'
import { draftOf } from '../../../edit/form/draft.ts'
import { facilityFile } from '../../../model/form-exchange.ts'
import { fill } from '../../../model/pattern.ts'
import { classed, element } from '../../element.ts'
import type { FacilityFiles } from '../contract.ts'
import { calledAt } from '../problem-at.ts'
import { changedReadings } from '../readings/spot.ts'
import { screenFor } from '../screen-for.ts'
import type { Sitting } from '../sitting.ts'
import { unsavedTables } from '../tables-beside.ts'

/** Whether nothing has been written yet, so that there is no file. */
export const isNewFile = (sitting: Sitting): boolean => !sitting.isOnDisk()

/** What of a file is not on disk yet, line by line. */
export type FileChange = { readonly name: string; readonly changes: readonly LineChange[] }

/** The files that say something else than on disk, with what they say. */
export const unsaved = (sitting: Sitting): FacilityFiles => {
  const { text, tables } = sitting.draft()
  const file: FacilityFiles = new Map(
    text === sitting.saved() && !isNewFile(sitting) ? [] : [[facilityFile, text]],
  )
  return new Map([...file, ...unsavedTables(tables, sitting.savedTables())])
}

export const fileChanges = (sitting: Sitting): readonly FileChange[] =>
  [...unsaved(sitting)]
    .map(([name, text]) => {
      const before =
        name === facilityFile ? sitting.saved() : (sitting.savedTables().get(name) ?? '')
      return { name, changes: changedLines(before, text) }
    })
    .filter(({ changes }) => changes.length > 0)

/** How many lines are not on disk yet. */
export const unsavedLines = (sitting: Sitting): number =>
  fileChanges(sitting)
    .flatMap(({ changes }) => changes)
    .reduce((sum, { before, after }) => sum + Math.max(before.length, after.length), 0)

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

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** What follows from other answers, or is chosen with an entry of a list: nobody has answered it alone. */
const silent = /^(?:id|paper|equipment\.\d+\.id|contacts\.\d+\.role)$/

/** The answers that are new or changed, counted and named below their subjects. */
export function answersSaid(sitting: Sitting): readonly HTMLElement[] {
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
  const readings = changedReadings(sitting)
  for (const { label } of readings) {
    const title = screenFor(sitting, 'surveys')?.subject.title ?? ''
    bySubject.set(title, (bySubject.get(title) ?? new Set()).add(sentence(label)))
  }
  const all = readings.reduce((sum, { count }) => sum + count, paths.length)
  if (all === 0) return []
  const count = all === 1 ? saving.one : fill(saving.several, { count: all })
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

/** The lines of a file that change, below its name where it is not the file of the fair. */
function linesIn(sitting: Sitting, { name, changes }: FileChange): readonly HTMLElement[] {
  if (changes.length === 0) return []
  const list = classed('ul', 'changes', ...changes.map((change) => changeItem(sitting, change)))
  return name === facilityFile ? [list] : [element('h3', name), list]
}

/** The lines themselves, for whoever reads files. */
export function linesFold(sitting: Sitting, files: readonly FileChange[]): HTMLElement {
  const { saving } = sitting.said.form.says
  const isNew = isNewFile(sitting)
  const others = files.filter(({ name }) => name !== facilityFile)
  return classed(
    'details',
    'lines',
    element('summary', saving.showLines),
    ...(isNew
      ? [
          classed('pre', 'after', element('code', sitting.draft().text)),
          ...others.flatMap((file) => linesIn(sitting, file)),
        ]
      : [element('p', saving.lead), ...files.flatMap((file) => linesIn(sitting, file))]),
  )
}
