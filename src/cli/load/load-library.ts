import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import type { SourceItem } from '../../compose/sources.ts'
import type { Problem } from '../../model/problem.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import type { LibraryTrees } from '../../validate/check-library.ts'
import { type Loaded, readTree, readTrees } from './read-tree.ts'

const single = [
  'cautions',
  'symptoms',
  'chooser',
  'sections',
  'glossary',
  'index',
  'reckoners',
  'findings',
  'plans',
  'calendars',
  'forms',
  'form',
  'cards',
  'field-book',
  'lessons',
  'search',
  'today',
  'words',
] as const

/** Reads the library of procedures and what they share. */
export async function loadLibrary(content: string, shared: string): Promise<Loaded<LibraryTrees>> {
  const [facts, procedures, chapters, worksheets, ...rest] = await Promise.all([
    readTree(shared, 'facts.json', 'shared'),
    readTrees(content, 'procedures', 'content'),
    readTrees(content, 'chapters', 'content'),
    readTrees(content, 'worksheets', 'content'),
    ...single.map((name) => readTree(content, `${name}.yaml`, 'content')),
  ])
  const all = [facts, procedures, chapters, worksheets, ...rest]
  const problems: Problem[] = all.flatMap((r) => [...r.problems])
  const files = all.flatMap((r) => r.files)
  const trees = Object.fromEntries(single.map((name, i) => [name, rest[i]?.value])) as Record<
    (typeof single)[number],
    SourceTree | undefined
  >
  if (!facts.value || single.some((name) => trees[name] === undefined))
    return { value: undefined, problems, files }
  return {
    value: {
      ...(trees as Record<(typeof single)[number], SourceTree>),
      facts: facts.value,
      procedures: procedures.value ?? [],
      chapters: chapters.value ?? [],
      worksheets: worksheets.value ?? [],
    },
    problems,
    files,
  }
}

/** Reads all references (CSL-JSON) of the shared data. */
export async function loadSources(shared: string): Promise<readonly SourceItem[]> {
  const folder = path.join(shared, 'sources')
  const names = (await readdir(folder)).filter((n) => n.endsWith('.json')).sort()
  const lists = await Promise.all(
    names.map(
      async (n) => JSON.parse(await readFile(path.join(folder, n), 'utf8')) as SourceItem[],
    ),
  )
  return [...new Map(lists.flat().map((item) => [item.id, item])).values()]
}
