import { hasErrors, type Problem, type Result } from '../../model/problem.ts'
import {
  checkLibrary,
  knownLibrary,
  type Library,
  type LibraryTrees,
} from '../../validate/check-library.ts'
import { keptOr } from '../kept/kept-results.ts'
import { libraryProblems } from './assemble-manual.ts'
import type { ReadFile } from './read-tree.ts'

/** All that can be wrong with a library in itself, whatever the facility. */
function judged(trees: LibraryTrees, sourceIds: ReadonlySet<string>) {
  const { value: library, problems, values } = checkLibrary(trees, sourceIds)
  const further = library ? libraryProblems(library) : []
  return { library, values, problems: [...problems, ...further] }
}

/** What is kept of a library that has been checked. */
type KeptLibrary = {
  readonly values: readonly unknown[]
  readonly problems: readonly Problem[]
}

/**
 * Checks a library, or takes what was found when the same files were checked before.
 * @param files All files that the trees were read from.
 */
export async function checkedLibrary(
  trees: LibraryTrees,
  sourceIds: ReadonlySet<string>,
  files: readonly ReadFile[],
): Promise<Result<Library>> {
  const parts = [...files.flatMap(({ path, text }) => [path, text]), JSON.stringify([...sourceIds])]
  // What was checked just now knows already where everything stands.
  let checked: Library | undefined
  const make = (): KeptLibrary => {
    const { library, ...found } = judged(trees, sourceIds)
    checked = library
    return found
  }
  const isSound = ({ problems }: KeptLibrary): boolean => !hasErrors(problems)
  const { values, problems } = await keptOr('library', parts, make, isSound)
  return { value: checked ?? knownLibrary(trees, values), problems }
}
