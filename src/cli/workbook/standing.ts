import { readdir, stat } from 'node:fs/promises'
import { figureIds } from '../../compute/uses/ids.ts'
import type { Base, TableTexts } from '../../edit/workbook/base.ts'
import { subjects } from '../../edit/workbook/subjects.ts'
import { tableKey, tablesNamed } from '../../edit/workbook/tables-named.ts'
import type { Standing } from '../../edit/workbook/take-in.ts'
import { factPaths } from '../../model/fact-spec.ts'
import type { Problem } from '../../model/problem.ts'
import { readTable } from '../../read/read-table.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import { projectFolders } from '../folders.ts'
import { type FacilityRoot, readNamed } from '../load/load-imports.ts'
import { readTree, readTrees } from '../load/read-tree.ts'

/** The facility of a folder, or why it cannot be read; a folder without one is nothing yet. */
export type Stood =
  | { readonly standing: Standing; readonly problems: readonly Problem[] }
  | { readonly standing: undefined; readonly problems: readonly Problem[] }

const isThere = (file: string): Promise<boolean> =>
  stat(file).then(
    () => true,
    () => false,
  )

/** Texts of the tables that a facility names; one that cannot be read is left to `check`. */
async function tablesOf(
  tree: SourceTree,
  folder: FacilityRoot,
): Promise<Readonly<Record<string, TableTexts>>> {
  const texts: Record<string, TableTexts> = {}
  for (const subject of subjects('us')) {
    if (subject.is !== 'table') continue
    for (const [i, named] of tablesNamed(tree.data, subject).entries()) {
      const file = await readNamed(named, folder)
      const table = file.value ? readTable(file.value).value : undefined
      if (table)
        texts[tableKey(subject, i)] = [table.head, ...table.rows].map((row) =>
          row.map((cell) => cell.text),
        )
    }
  }
  return texts
}

/** Titles of all procedures, of the library and of the facility's own, by id. */
async function proceduresFor(root: string): Promise<ReadonlyMap<string, string>> {
  const { content } = projectFolders()
  const trees = await Promise.all([
    readTrees(content, 'procedures', 'content'),
    readTrees(root, 'procedures', ''),
  ])
  const entries = trees.flatMap(({ value }) =>
    (value ?? []).flatMap(({ data }) => {
      const { id, title } = (data ?? {}) as { readonly id?: unknown; readonly title?: unknown }
      return typeof id === 'string' ? [[id, typeof title === 'string' ? title : id] as const] : []
    }),
  )
  return new Map(entries.toSorted(([, a], [, b]) => a.localeCompare(b, 'en')))
}

const quantities: ReadonlySet<string> = new Set([...figureIds, ...factPaths])

/** Reads what a folder says of its facility now. @param today `YYYY-MM-DD`. */
export async function standingIn(root: string, today: string): Promise<Stood> {
  const files = (await isThere(root)) ? await readdir(root) : []
  const named = { procedures: await proceduresFor(root), quantities, today }
  if (!files.includes('facility.yaml'))
    return {
      standing: { tree: undefined, tables: { texts: {}, files }, ...named },
      problems: [],
    }
  const folder = { root, shown: '' }
  const { value: tree, problems } = await readTree(root, 'facility.yaml', '')
  if (!tree) return { standing: undefined, problems }
  return {
    standing: {
      tree,
      tables: { texts: await tablesOf(tree, folder), files },
      ...named,
    },
    problems,
  }
}

/** What a workbook of it is made of. */
export const baseFor = ({ tree, tables }: Standing): Base => ({
  data: tree?.data ?? {},
  tables: tables.texts,
})
