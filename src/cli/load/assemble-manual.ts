import { composeManual } from '../../compose/compose-manual.ts'
import type { SourceItem } from '../../compose/sources.ts'
import { type Computed, computeFacility } from '../../compute/compute-facility.ts'
import { findingsNamed } from '../../compute/findings/check-named.ts'
import { findingWordProblems } from '../../compute/findings/check-words.ts'
import { placeProblems } from '../../compute/place-problems.ts'
import { worksheetWordProblems } from '../../compute/uses/check-words.ts'
import { figureIds } from '../../compute/uses/ids.ts'
import { worksheetWords } from '../../compute/uses/worksheet-words.ts'
import { factPaths } from '../../model/fact-spec.ts'
import type { Manual } from '../../model/manual.ts'
import { hasErrors, type Problem, type Result } from '../../model/problem.ts'
import { checkDrawings } from '../../render/drawings/check-drawings.ts'
import { checkPages } from '../../render/site/check-pages.ts'
import type { Library, Sourced } from '../../validate/check-library.ts'
import { checkText } from '../../validate/check-text.ts'
import { checkNotes } from '../../validate/facility/check-notes.ts'
import { factWords } from '../../validate/fact-words.ts'
import type { LoadedFacility } from './load-facility.ts'

/** What texts may name: figures and facts, procedures. */
const targetsIn = (library: Library) => ({
  quantities: new Set([...figureIds, ...factPaths]),
  procedures: new Map(library.procedures.map((p) => [p.value.id, p.value.title])),
})

/** What is wrong with a library whose files have passed their schemas, at whatever facility. */
export function libraryProblems(library: Library): readonly Problem[] {
  const targets = targetsIn(library)
  const lists = [
    library.procedures,
    library.chapters,
    library.cautions,
    library.symptoms,
    library.chooser,
    library.sections,
    library.terms,
    library.findings,
    library.reckoners,
    library.schedules,
    library.forms,
    library.cards,
    library.fieldBook,
    library.today,
  ]
  return [
    ...findingWordProblems(library.findings),
    ...findingsNamed(library.schedules),
    ...worksheetWordProblems(library.worksheets),
    ...checkDrawings(library),
    ...checkPages(library.wordsFile.tree),
    ...lists.flatMap((list) => checkText(list as readonly Sourced<unknown>[], targets)),
  ]
}

type Assembled = {
  readonly manual: Manual | undefined
  readonly computed: Computed | undefined
  readonly problems: readonly Problem[]
}

/**
 * Computes and composes the manual of a facility that was read, from a library that was read.
 * @param library Checked, with all that was found in it.
 * @returns All problems of both; `manual` only where there is no error among them.
 */
export function assembleManual(
  { facility, date, problems: ofFacility }: Omit<LoadedFacility, 'files'>,
  { value: library, problems: ofLibrary }: Result<Library>,
  sources: readonly SourceItem[],
): Assembled {
  const words = {
    facts: factWords(library),
    units: library?.words.units,
    worksheets: worksheetWords((library?.worksheets ?? []).map((f) => f.value)),
  }
  const computed = facility && !hasErrors(ofFacility) ? computeFacility(facility, words) : undefined
  const problems = [
    ...ofFacility,
    ...(facility && computed ? placeProblems(facility, computed) : []),
    ...ofLibrary,
    ...(facility && library ? checkNotes(facility, targetsIn(library)) : []),
  ]
  if (!facility || !library || !computed || hasErrors(problems))
    return { manual: undefined, computed: undefined, problems }
  const manual = composeManual({ facility, computed, library, sources, date })
  return { manual, computed, problems }
}
