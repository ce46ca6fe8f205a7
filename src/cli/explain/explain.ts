import { existsSync } from 'node:fs'
import path from 'node:path'
import { figureEntry } from '../../compose/figures-file.ts'
import { printedSources, type SourceItem } from '../../compose/sources.ts'
import type { Computed } from '../../compute/compute-facility.ts'
import { isFigureId } from '../../compute/uses/ids.ts'
import { type Use, useIdOf } from '../../compute/uses/use.ts'
import { useTable } from '../../compute/uses/use-table.ts'
import { didYouMean } from '../../model/closest.ts'
import type { Worksheet } from '../../model/figure.ts'
import type { Manual } from '../../model/manual.ts'
import { hasErrors } from '../../model/problem.ts'
import type { Library } from '../../validate/check-library.ts'
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

/** The use behind a worksheet, which alone is worked: by its id, number, calculation or a figure. */
function findUse(wanted: string, { engine, words }: Computed): Use | undefined {
  const { worksheets } = words.worksheets
  const named = wanted.toLowerCase()
  const isMeant: readonly ((use: Use) => boolean)[] = [
    ({ id }) => id === wanted,
    ({ id }) => `w-${worksheets[id]?.number}` === named,
    ({ calculation }) => calculation.id === wanted,
    ({ id, calculation }) =>
      id === useIdOf(wanted) && wanted.slice(id.length + 1) in calculation.outputs,
  ]
  return isMeant.flatMap((is) => engine.uses.find(is) ?? [])[0]
}

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

/** What a facility answers with. */
type Ready = {
  readonly manual: Manual
  readonly computed: Computed
  readonly library: Library
  readonly sources: readonly SourceItem[]
}

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

function printed(sheet: Worksheet, { figure, json }: Asked, found: Worked): Answer {
  const wanted = sheet.outputs.filter((o) => o.id === figure)
  const asked = wanted.length > 0 ? wanted : sheet.outputs
  return {
    text: json ? jsonText(figure, sheet) : worksheetText(sheet, found),
    numbers: asked.some((o) => o.value.ok),
  }
}

/** What a calculation is worked with here. */
function workedWith(
  calculation: Worked['calculation'],
  { manual, computed: { locale, words }, library, sources }: Ready,
): Worked {
  const source = (id: string): string =>
    printedSources(new Set([id]), sources, library.words)[0]?.text ?? id
  return { calculation, locale, words: words.worksheets, facility: manual.facility.name, source }
}

/** A calculation of any facility or none. */
function answerAny(asked: Asked, ready: Ready): Answer {
  const calculation = anyCalculations.get(asked.figure)
  if (!calculation) {
    const hint = didYouMean(asked.figure, [...anyCalculations.keys()])
    return {
      faults: [
        `there is no calculation "${asked.figure}"; ${hint ?? '"explain --all" lists them'}`,
      ],
    }
  }
  const sheet = workTyped(calculation, asked.inputs, ready.computed)
  return 'outputs' in sheet
    ? printed(sheet, asked, workedWith(calculation, ready))
    : { faults: sheet }
}

/** A worksheet of the facility. */
function answerHere(asked: Asked, ready: Ready): Answer {
  const { figure, inputs } = asked
  const { manual, computed } = ready
  const { engine } = computed
  const sharing = engine.uses.filter((u) => u.calculation.id === figure && u.id !== figure)
  if (sharing.length > 1) {
    const ids = new Set<string>(sharing.map(({ id }) => id))
    return {
      text: sharedText(
        figure,
        manual.worksheets.filter(({ id }) => ids.has(id)),
      ),
      numbers: true,
    }
  }
  const use = findUse(figure, computed)
  const found = use && engine.worksheet(use.id)
  if (!use || !found) return { faults: [unknownFigure(figure, manual, computed)] }
  const { values, faults } = readInputs(inputs, found.id, found.inputs)
  if (faults.length > 0) return { faults }
  const sheet = values.size === 0 ? found : workAgain(computed, found, values)
  return printed(sheet, asked, workedWith(use.calculation, ready))
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
  const loaded = await loadKept(facility, folders, io)
  const { manual, computed, library, sources, problems } = loaded
  if (!manual || !computed || !library || hasErrors(problems)) {
    io.err(problemsText(problems, terminalNames(facility, folders, io.cwd), io.colors))
    return exit.faults
  }
  if (figure === undefined) {
    io.out(options.all ? anyListText(computed.words.worksheets) : listText(manual))
    return exit.fine
  }
  const inputs = shift ? others.slice(1) : others
  const asked = { figure, inputs, json: options.json ?? false }
  const ready = { manual, computed, library, sources }
  const answer = (options.all ? answerAny : answerHere)(asked, ready)
  if ('faults' in answer) {
    io.err(answer.faults.join('\n'))
    return exit.usage
  }
  io.out(answer.text)
  return answer.numbers ? exit.fine : exit.noNumber
}
