import { composeManual } from '../../compose/compose-manual.ts'
import { type Computed, computeFacility } from '../../compute/compute-facility.ts'
import { findingsNamed } from '../../compute/findings/check-named.ts'
import { findingWordProblems } from '../../compute/findings/check-words.ts'
import { worksheetWordProblems } from '../../compute/uses/check-words.ts'
import { figureIds } from '../../compute/uses/ids.ts'
import { worksheetWords } from '../../compute/uses/worksheet-words.ts'
import { factPaths } from '../../model/fact-spec.ts'
import type { Manual } from '../../model/manual.ts'
import { hasErrors, type Problem } from '../../model/problem.ts'
import { checkDrawings } from '../../render/drawings/check-drawings.ts'
import { checkPages } from '../../render/site/check-pages.ts'
import type { Facility } from '../../validate/check-facility.ts'
import {
  checkLibrary,
  type Library,
  type LibraryTrees,
  type Sourced,
} from '../../validate/check-library.ts'
import { checkText } from '../../validate/check-text.ts'
import { factWords } from '../../validate/fact-words.ts'
import { note } from '../../validate/schemas/facility.ts'
import { loadFacility, placeProblems } from './load-facility.ts'
import { inLanguageOf } from './load-language.ts'
import { loadLibrary, loadSources } from './load-library.ts'
import { type ReadFile, readTrees } from './read-tree.ts'
import { pathBelow } from './shown-path.ts'

/** Where the project's own folders are. */
export type Folders = {
  readonly content: string
  readonly shared: string
  readonly templates: string
  readonly dist: string
  readonly project: string
}

/** A manual ready to be rendered, with everything that was said on the way. */
export type LoadedManual = {
  readonly manual: Manual | undefined
  readonly computed: Computed | undefined
  readonly library: Library | undefined
  readonly facility: Facility | undefined
  readonly problems: readonly Problem[]
  readonly contentFiles: readonly ReadFile[]
  readonly facilityFiles: readonly ReadFile[]
}

function textProblems(library: Library, facility: Facility): Problem[] {
  const targets = {
    quantities: new Set([...figureIds, ...factPaths]),
    procedures: new Set(library.procedures.map((p) => p.value.id)),
  }
  const notes: Sourced<unknown>[] = (facility.file.notes ?? []).map((value, i) => ({
    value,
    tree: facility.tree,
    path: ['notes', i],
    schema: note,
  }))
  const unknownNotes = (facility.file.notes ?? []).flatMap((n, i) =>
    targets.procedures.has(n.procedure)
      ? []
      : [
          facility.tree.problem(
            facility.tree.placeOf(['notes', i, 'procedure']),
            'ref/missing',
            `there is no procedure "${n.procedure}"`,
            { hint: `known: ${[...targets.procedures].join(', ')}` },
          ),
        ],
  )
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
    ...unknownNotes,
    ...lists.flatMap((list) => checkText(list as readonly Sourced<unknown>[], targets)),
    ...checkText(notes, targets),
  ]
}

/** Adds what a facility brings along to the library's trees. */
const withOwn = (trees: LibraryTrees, own: LibraryTrees['procedures']): LibraryTrees => ({
  ...trees,
  procedures: [...trees.procedures, ...own],
})

/**
 * Reads, checks, computes and composes the manual of a facility folder. All faults of all files are
 * collected; `manual` is there only when there is no error among them.
 * @param today What the clock says, `YYYY-MM-DD`.
 * @param wanted The date of the manual, where somebody asks for one; else the facility file says to
 *   which day it is up to date, else it is today's.
 */
export async function loadManual(
  folder: string,
  folders: Folders,
  today: string,
  wanted?: string,
): Promise<LoadedManual> {
  // Where a folder elsewhere lies concerns no reader of the manual.
  const shownRoot = pathBelow(folders.project, folder) ?? ''
  const [libraryTrees, sources, loaded, ownTrees] = await Promise.all([
    loadLibrary(folders.content, folders.shared),
    loadSources(folders.shared),
    loadFacility({ root: folder, shown: shownRoot }, { today, wanted }),
    readTrees(folder, 'procedures', shownRoot),
  ])
  const { facility, date } = loaded
  const translated = libraryTrees.value
    ? await inLanguageOf(facility, libraryTrees.value, folders.content)
    : { value: undefined, problems: [], files: [] }
  const checkedLibrary = translated.value
    ? checkLibrary(
        withOwn(translated.value, ownTrees.value ?? []),
        new Set(sources.map((s) => s.id)),
      )
    : { value: undefined, problems: [] }
  const library = checkedLibrary.value
  const words = {
    facts: factWords(library),
    units: library?.words.units,
    worksheets: worksheetWords((library?.worksheets ?? []).map((f) => f.value)),
  }
  const computed =
    facility && !hasErrors(loaded.problems) ? computeFacility(facility, words) : undefined
  const problems = [
    ...loaded.problems,
    ...(facility && computed ? placeProblems(facility, computed) : []),
    ...ownTrees.problems,
    ...libraryTrees.problems,
    ...translated.problems,
    ...checkedLibrary.problems,
    ...(library ? findingWordProblems(library.findings) : []),
    ...(library ? findingsNamed(library.schedules) : []),
    ...(library ? worksheetWordProblems(library.worksheets) : []),
    ...(library ? [...checkDrawings(library), ...checkPages(library.wordsFile.tree)] : []),
    ...(facility && library ? textProblems(library, facility) : []),
  ]
  const read = {
    contentFiles: [...libraryTrees.files, ...translated.files],
    facilityFiles: [...loaded.files, ...ownTrees.files],
  }
  if (!facility || !library || !computed || hasErrors(problems))
    return { manual: undefined, computed: undefined, library, facility, problems, ...read }
  const manual = composeManual({ facility, computed, library, sources, date })
  return { manual, computed, library, facility, problems, ...read }
}
