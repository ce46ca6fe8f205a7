import type { LibraryFile, PageData } from '../../model/page-data.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import { checkLibrary, type Library } from '../../validate/check-library.ts'
import { loadLibrary, loadSources } from './load-library.ts'
import type { Folders } from './load-manual.ts'

const fileOf = ({ file, data }: SourceTree): LibraryFile => ({ path: file.path, data })

const isList = (trees: SourceTree | readonly SourceTree[]): trees is readonly SourceTree[] =>
  Array.isArray(trees)

/**
 * The library as a page carries it, and as it was checked.
 * @throws Error when it has faults: `check` lists them.
 */
export async function loadPageLibrary(
  folders: Folders,
): Promise<Pick<PageData, 'library' | 'sources'> & { readonly checked: Library }> {
  const [read, sources] = await Promise.all([
    loadLibrary(folders.content, folders.shared),
    loadSources(folders.shared),
  ])
  const checked = read.value && checkLibrary(read.value, new Set(sources.map((s) => s.id)))
  if (!read.value || !checked?.value || [...read.problems, ...checked.problems].length > 0)
    throw new Error('the library has faults; npm run check lists them')
  const parts: [string, SourceTree | readonly SourceTree[]][] = Object.entries(read.value)
  const library = Object.fromEntries(
    parts.map(([part, trees]) => [part, isList(trees) ? trees.map(fileOf) : fileOf(trees)]),
  )
  return { library, sources, checked: checked.value }
}
