import { readdir } from 'node:fs/promises'
import path from 'node:path'
import { baseLanguage } from '../../model/language.ts'
import type { Problem } from '../../model/problem.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { LibraryTrees } from '../../validate/check-library.ts'
import { translateLibrary } from '../../validate/language/translate-library.ts'
import { type Loaded, readTree } from './read-tree.ts'
import { withSlashes } from './shown-path.ts'

const languages = 'languages'

const namesIn = (folder: string): Promise<readonly string[]> =>
  readdir(folder, { recursive: true }).catch(() => [])

const unknownLanguage = async (
  { tree }: Facility,
  code: string,
  content: string,
): Promise<Problem> => {
  const known = await readdir(path.join(content, languages)).catch(() => [])
  return tree.problem(
    tree.placeOf(['language']),
    'ref/missing',
    `there is no folder content/${languages}/${code}`,
    { hint: `known: ${[baseLanguage, ...known.sort()].join(', ')}` },
  )
}

/**
 * The library in the language of a facility: as it is, or with the texts of the language's folder
 * beside it.
 */
export async function inLanguageOf(
  facility: Facility | undefined,
  library: LibraryTrees,
  content: string,
): Promise<Loaded<LibraryTrees>> {
  const code = facility?.file.language ?? baseLanguage
  if (!facility || code === baseLanguage) return { value: library, problems: [], files: [] }
  const folder = path.join(content, languages, code)
  const names = (await namesIn(folder))
    .map((name) => withSlashes(name))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
  if (names.length === 0)
    return {
      value: library,
      problems: [await unknownLanguage(facility, code, content)],
      files: [],
    }
  const shown = `content/${languages}/${code}`
  const read = await Promise.all(names.map((name) => readTree(folder, name, shown)))
  const faults = read.flatMap((r) => [...r.problems])
  const files = read.flatMap((r) => r.files)
  // A file that cannot be read would be said to be missing, too.
  if (faults.some((f) => f.severity === 'error')) return { value: library, problems: faults, files }
  const trees = new Map(
    read.flatMap(({ value }, i) => (value ? [[names[i] ?? '', value] as const] : [])),
  )
  return { ...translateLibrary(library, 'content', { folder: shown, trees }), files }
}
