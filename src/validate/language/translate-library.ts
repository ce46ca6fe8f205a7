import type { Problem, Result } from '../../model/problem.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import { fileProblem } from '../../read/source-file.ts'
import type { LibraryTrees } from '../check-library.ts'
import { librarySchemas } from '../schemas/library-schemas.ts'
import { translateTree } from './translate-tree.ts'

/** The files of a language, by their names inside its folder: `procedures/seal.yaml`. */
export type LanguageFiles = {
  /** What problems call the folder, such as `content/languages/fr`. */
  readonly folder: string
  readonly trees: ReadonlyMap<string, SourceTree>
}

const missingFile = (file: string, base: string): Problem =>
  fileProblem(file, 'file/missing', `there is no file ${file}`, `it says the texts of ${base}`)

const surplusFile = (tree: SourceTree): Problem =>
  tree.problem(tree.placeOf([]), 'ref/missing', 'the library has no file of this name', {
    hint: 'a language has the same files as the library',
  })

/**
 * The name of a file below the folder of its library or language; reference data, which lie
 * elsewhere, have their own name.
 */
const nameIn = (folder: string, { file: { path } }: SourceTree): string =>
  path.startsWith(`${folder}/`)
    ? path.slice(folder.length + 1)
    : path.slice(path.lastIndexOf('/') + 1).replace(/\.json$/, '.yaml')

/**
 * The library in another language. Structure, figures and conditions are those of the library;
 * every text comes from the files of the language, and each must be there.
 * @param root What problems call the folder of the library, such as `content`.
 */
export function translateLibrary(
  library: LibraryTrees,
  root: string,
  { folder, trees }: LanguageFiles,
): Result<LibraryTrees> {
  const translated = (base: SourceTree, kind: keyof LibraryTrees): Result<SourceTree> => {
    const name = nameIn(root, base)
    const language = trees.get(name)
    return language
      ? translateTree(base, librarySchemas[kind], language)
      : { value: base, problems: [missingFile(`${folder}/${name}`, base.file.path)] }
  }
  const parts = (Object.keys(librarySchemas) as (keyof LibraryTrees)[]).map((kind) => {
    const trees = library[kind]
    const results = [trees].flat().map((base) => translated(base, kind))
    const values = results.flatMap((r) => r.value ?? [])
    return { kind, value: 'data' in trees ? values[0] : values, results }
  })
  const names = new Set(
    Object.values(library)
      .flat()
      .map((base) => nameIn(root, base)),
  )
  const surplus = [...trees.values()].filter((tree) => !names.has(nameIn(folder, tree)))
  return {
    value: Object.fromEntries<unknown>(
      parts.map(({ kind, value }) => [kind, value]),
    ) as LibraryTrees,
    problems: [
      ...parts.flatMap((p) => p.results.flatMap((r) => [...r.problems])),
      ...surplus.map(surplusFile),
    ],
  }
}
