import { existsSync } from 'node:fs'
import path from 'node:path'
import { figureEntry } from '../../compose/figures-file.ts'
import { isFigureId } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { useTable } from '../../compute/uses/use-table.ts'
import { didYouMean } from '../../model/closest.ts'
import type { Worksheet } from '../../model/figure.ts'
import type { Manual } from '../../model/manual.ts'
import { hasErrors } from '../../model/problem.ts'
import { facilityFolder, projectFolders, terminalNames } from '../folders.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { loadManual } from '../load/load-manual.ts'
import { problemsText } from '../problem-text.ts'
import { readInputs, workAgain } from './given-inputs.ts'
import { listText, sharedText, worksheetText } from './worksheet-text.ts'

export type ExplainOptions = { readonly facility?: string; readonly json?: boolean }

const findSheet = (manual: Manual, wanted: string): Worksheet | undefined =>
  manual.worksheets.find(
    (w) =>
      w.id === wanted ||
      w.calculation === wanted ||
      w.number.toLowerCase() === wanted.toLowerCase() ||
      (w.id === useIdOf(wanted) && w.outputs.some((o) => o.id === wanted)),
  )

/** A figure's entry, or those of all figures of its worksheet where that was asked for. */
function jsonText(figure: string, sheet: Worksheet): string {
  const wanted = sheet.outputs.filter((o) => o.id === figure)
  const entries = (wanted.length > 0 ? wanted : sheet.outputs).map((o) => figureEntry(o, sheet))
  return JSON.stringify(wanted.length === 1 ? entries[0] : entries, null, 1)
}

const unknownFigure = (figure: string, { figures, worksheets }: Manual): string => {
  if (isFigureId(figure) || figure in useTable)
    return `"${figure}" is worked out where a facility has what it needs; this one lacks a machine, a fact or a survey for it`
  const known = [...figures.map((f) => f.id), ...worksheets.map((w) => w.id)]
  const hint = didYouMean(figure, known) ?? '"explain" alone lists all'
  return `there is no figure "${figure}" in this manual; ${hint}`
}

/** A facility folder given as the sister commands take it. */
const folderNamed = (argument: string | undefined, cwd: string): string | undefined =>
  argument !== undefined && existsSync(path.resolve(cwd, argument, 'facility.yaml'))
    ? argument
    : undefined

/** Prints the worksheet behind a figure, also with other inputs; alone, lists all calculations. */
export async function explain(
  first: string | undefined,
  others: readonly string[],
  options: ExplainOptions,
  io: Io,
): Promise<ExitCode> {
  const folders = projectFolders()
  const named = options.facility ?? folderNamed(first, io.cwd)
  const facility = facilityFolder(named, io.cwd, folders)
  const shift = options.facility === undefined && named !== undefined
  const figure = shift ? others[0] : first
  const inputs = shift ? others.slice(1) : others
  const { manual, computed, problems } = await loadManual(facility, folders, io.today)
  if (!manual || !computed || hasErrors(problems)) {
    io.err(problemsText(problems, terminalNames(facility, folders, io.cwd), io.colors))
    return exit.faults
  }
  if (figure === undefined) {
    io.out(listText(manual))
    return exit.fine
  }
  const sharing = manual.worksheets.filter((w) => w.calculation === figure && w.id !== figure)
  if (sharing.length > 1) {
    io.out(sharedText(figure, sharing))
    return exit.fine
  }
  const found = findSheet(manual, figure)
  if (!found) {
    io.err(unknownFigure(figure, manual))
    return exit.usage
  }
  const { values, faults } = readInputs(inputs, found)
  if (faults.length > 0) {
    io.err(faults.join('\n'))
    return exit.usage
  }
  const sheet = values.size === 0 ? found : workAgain(computed, found, values)
  io.out(options.json ? jsonText(figure, sheet) : worksheetText(sheet, manual))
  const wanted = sheet.outputs.filter((o) => o.id === figure)
  const asked = wanted.length > 0 ? wanted : sheet.outputs
  return asked.some((o) => o.value.ok) ? exit.fine : exit.noNumber
}
