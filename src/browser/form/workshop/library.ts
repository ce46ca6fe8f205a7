import type { SourceItem } from '../../../compose/sources.ts'
import type { LibraryFile, PageData } from '../../../model/page-data.ts'
import { knownYaml, readYaml, type SourceTree } from '../../../read/read-yaml.ts'
import { checkLibrary, type Library, type LibraryTrees } from '../../../validate/check-library.ts'
import type { FacilityFiles } from '../contract.ts'

/** Where in its file something stands is asked of a library with faults alone, and this has none. */
const treeOf = ({ path, data }: LibraryFile): SourceTree => knownYaml({ path, text: '' }, data)

const isList = (files: LibraryFile | readonly LibraryFile[]): files is readonly LibraryFile[] =>
  Array.isArray(files)

/** Procedures that a facility brings along; what cannot be read is left out. */
const ownProcedures = (files: FacilityFiles): readonly SourceTree[] =>
  [...files]
    .filter(([path]) => /^procedures\/[^/]+\.yaml$/.test(path))
    .flatMap(([path, text]) => readYaml({ path, text }).value ?? [])

/**
 * The library that the page carries, with the procedures that a facility brings along. Where these
 * have faults they are left out: the program tells them by line.
 */
export function libraryOf(data: PageData, files: FacilityFiles): Library {
  const trees = Object.fromEntries(
    Object.entries(data.library).map(([part, list]) => [
      part,
      isList(list) ? list.map(treeOf) : treeOf(list),
    ]),
  ) as unknown as LibraryTrees
  const ids = new Set(sourcesOf(data).map(({ id }) => id))
  const own = ownProcedures(files)
  const whole = checkLibrary({ ...trees, procedures: [...trees.procedures, ...own] }, ids)
  const { value, problems } = own.length > 0 && problemsIn(whole) ? checkLibrary(trees, ids) : whole
  if (!value) throw new Error(problems[0]?.message ?? 'no library')
  return value
}

const problemsIn = ({ problems }: { readonly problems: readonly unknown[] }): boolean =>
  problems.length > 0

export const sourcesOf = ({ sources }: PageData): readonly SourceItem[] =>
  sources as readonly SourceItem[]
