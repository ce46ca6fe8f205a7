import { existsSync } from 'node:fs'
import path from 'node:path'
import { figureEntry } from '../../compose/figures-file.ts'
import type { Computed } from '../../compute/compute-facility.ts'
import { isFigureId } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { useTable } from '../../compute/uses/use-table.ts'
import { didYouMean } from '../../model/closest.ts'
import type { Worksheet } from '../../model/figure.ts'
import type { Manual } from '../../model/manual.ts'
import { hasErrors } from '../../model/problem.ts'
import { facilityFolder, projectFolders, terminalNames } from '../folders.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { loadKept } from '../load/load-kept.ts'
import { problemsText } from '../problem-text.ts'
import { anyCalculations, anyListText, workTyped } from './any-calculation.ts'
import { readInputs, workAgain } from './given-inputs.ts'
import { missingText } from './missing-text.ts'
import { listText, sharedText, type Worked, worksheetText } from './worksheet-text.ts'

export type ExplainOptions = {
  readonly facility?: string
  readonly json?: boolean
  readonly all?: boolean
}

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

const unknownFigure = (figure: string, manual: Manual, computed: Computed): string => {
  const { figures, worksheets } = manual
  const use = figure in useTable ? figure : isFigureId(figure) ? useIdOf(figure) : undefined
  if (use !== undefined) {
    const sheet = worksheets.find((w) => w.id === use)
    return sheet
      ? `here "${use}" has other figures: ${sheet.outputs.map((o) => o.id).join(', ')}`
      : `there is no figure "${figure}" in this manual; ${missingText(use, computed)}`
  }
  if (anyCalculations.has(figure))
    return `no worksheet of this manual works with "${figure}"; "explain --all ${figure}" does, with inputs of your own`
  const known = [...figures.map((f) => f.id), ...worksheets.map((w) => w.id)]
  const hint = didYouMean(figure, known) ?? '"explain" alone lists all'
  return `there is no figure "${figure}" in this manual; ${hint}`
}

/** A facility folder given as the sister commands take it. */
const folderNamed = (argument: string | undefined, cwd: string): string | undefined =>
  argument !== undefined && existsSync(path.resolve(cwd, argument, 'facility.yaml'))
    ? argument
    : undefined

/** What was asked for, and with what. */
type Asked = {
  readonly figure: string
  readonly inputs: readonly string[]
  readonly json: boolean
}

/** What is printed, or why nothing can be. */
type Answer =
  | { readonly text: string; readonly numbers: boolean }
  | { readonly faults: readonly string[] }

function printed(sheet: Worksheet, { figure, json }: Asked, manual: Manual, found: Worked): Answer {
  const wanted = sheet.outputs.filter((o) => o.id === figure)
  const asked = wanted.length > 0 ? wanted : sheet.outputs
  return {
    text: json ? jsonText(figure, sheet) : worksheetText(sheet, manual, found),
    numbers: asked.some((o) => o.value.ok),
  }
}

/** A calculation of any facility or none. */
function answerAny(asked: Asked, manual: Manual, computed: Computed): Answer {
  const { locale, words } = computed
  const calculation = anyCalculations.get(asked.figure)
  if (!calculation) {
    const hint = didYouMean(asked.figure, [...anyCalculations.keys()])
    return {
      faults: [
        `there is no calculation "${asked.figure}"; ${hint ?? '"explain --all" lists them'}`,
      ],
    }
  }
  const sheet = workTyped(calculation, asked.inputs, computed)
  return 'outputs' in sheet
    ? printed(sheet, asked, manual, { calculation, locale, words: words.worksheets })
    : { faults: sheet }
}

/** A worksheet of the facility. */
function answerHere(asked: Asked, manual: Manual, computed: Computed): Answer {
  const { figure, inputs } = asked
  const { engine, locale, words } = computed
  const sharing = manual.worksheets.filter((w) => w.calculation === figure && w.id !== figure)
  if (sharing.length > 1) return { text: sharedText(figure, sharing), numbers: true }
  const found = findSheet(manual, figure)
  const use = engine.uses.find(({ id }) => id === found?.id)
  if (!found || !use) return { faults: [unknownFigure(figure, manual, computed)] }
  const { values, faults } = readInputs(inputs, found.id, found.inputs)
  if (faults.length > 0) return { faults }
  const sheet = values.size === 0 ? found : workAgain(computed, found, values)
  return printed(sheet, asked, manual, {
    calculation: use.calculation,
    locale,
    words: words.worksheets,
  })
}

/**
 * Prints the worksheet behind a figure, also with other inputs, or a calculation of no facility;
 * alone, lists all.
 */
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
  const { manual, computed, problems } = await loadKept(facility, folders, io)
  if (!manual || !computed || hasErrors(problems)) {
    io.err(problemsText(problems, terminalNames(facility, folders, io.cwd), io.colors))
    return exit.faults
  }
  if (figure === undefined) {
    io.out(options.all ? anyListText(computed.words.worksheets) : listText(manual))
    return exit.fine
  }
  const inputs = shift ? others.slice(1) : others
  const asked = { figure, inputs, json: options.json ?? false }
  const answer = (options.all ? answerAny : answerHere)(asked, manual, computed)
  if ('faults' in answer) {
    io.err(answer.faults.join('\n'))
    return exit.usage
  }
  io.out(answer.text)
  return answer.numbers ? exit.fine : exit.noNumber
}
