import type { SourceItem } from '../../compose/sources.ts'
import type { Computed } from '../../compute/compute-facility.ts'
import type { Manual } from '../../model/manual.ts'
import type { Problem } from '../../model/problem.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Library, LibraryTrees } from '../../validate/check-library.ts'
import { assembleManual } from './assemble-manual.ts'
import { checkedLibrary } from './checked-library.ts'
import { loadFacility } from './load-facility.ts'
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
  /** All references. */
  readonly sources: readonly SourceItem[]
  readonly problems: readonly Problem[]
  readonly contentFiles: readonly ReadFile[]
  readonly facilityFiles: readonly ReadFile[]
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
  const { facility } = loaded
  const translated = libraryTrees.value
    ? await inLanguageOf(facility, libraryTrees.value, folders.content)
    : { value: undefined, problems: [], files: [] }
  const contentFiles = [...libraryTrees.files, ...translated.files]
  const checked = translated.value
    ? await checkedLibrary(
        withOwn(translated.value, ownTrees.value ?? []),
        new Set(sources.map((s) => s.id)),
        [...contentFiles, ...ownTrees.files],
      )
    : { value: undefined, problems: [] }
  const library = checked.value
  const { manual, computed, problems } = assembleManual(
    loaded,
    {
      value: library,
      problems: [
        ...ownTrees.problems,
        ...libraryTrees.problems,
        ...translated.problems,
        ...checked.problems,
      ],
    },
    sources,
  )
  const facilityFiles = [...loaded.files, ...ownTrees.files]
  return { manual, computed, library, facility, sources, problems, contentFiles, facilityFiles }
}
