import { hasErrors, type Problem, type Result } from '../../model/problem.ts'
import {
  checkLibrary,
  knownLibrary,
  type Library,
  type LibraryTrees,
} from '../../validate/check-library.ts'
import { keptResults } from '../kept/kept-results.ts'
import { libraryProblems } from './assemble-manual.ts'
import type { ReadFile } from './read-tree.ts'

/** All that can be wrong with a library in itself, whatever the facility. */
function judged(trees: LibraryTrees, sourceIds: ReadonlySet<string>) {
  const { value: library, problems, values } = checkLibrary(trees, sourceIds)
  const further = library ? libraryProblems(library) : []
  return { library, values, problems: [...problems, ...further] }
}

/** What is kept of a library that has been checked. */
type KeptLibrary = { readonly values: readonly unknown[]; readonly problems: readonly Problem[] }

/**
 * Checks a library, or takes what was found when the same files were checked before.
 * @param files All files that the trees were read from.
 */
export function checkedLibrary(
  trees: LibraryTrees,
  sourceIds: ReadonlySet<string>,
  files: readonly ReadFile[],
): Result<Library> {
  const made: { library?: Library | undefined; problems?: readonly Problem[] } = {}
  const make = (): KeptLibrary | undefined => {
    const { values, ...found } = judged(trees, sourceIds)
    Object.assign(made, found)
    return hasErrors(found.problems) ? undefined : { values, problems: found.problems }
  }
  const parts = [...files.flatMap(({ path, text }) => [path, text]), JSON.stringify([...sourceIds])]
  const results = keptResults()
  const kept = results ? results.get('library', parts, make) : make()
  // What was checked just now knows already where everything stands.
  if (made.problems) return { value: made.library, problems: made.problems }
  return kept
    ? { value: knownLibrary(trees, kept.values), problems: kept.problems }
    : { value: undefined, problems: [] }
}
