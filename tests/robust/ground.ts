import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { projectFolders } from '../../src/cli/folders.ts'
import { libraryProblems } from '../../src/cli/load/assemble-manual.ts'
import { loadLibrary, loadSources } from '../../src/cli/load/load-library.ts'
import { loadScripts } from '../../src/cli/load/load-scripts.ts'
import { loadTemplates } from '../../src/cli/load/load-templates.ts'
import type { SourceItem } from '../../src/compose/sources.ts'
import type { Problem, Result } from '../../src/model/problem.ts'
import type { SiteAssets } from '../../src/render/assets.ts'
import { checkLibrary, type Library, type LibraryTrees } from '../../src/validate/check-library.ts'
import { smallLibrary } from '../fixtures/small/set-up.ts'

/** The day of all runs. */
export const today = '2027-06-14'

/** A library with all that was found in it. */
export type Shelf = {
  readonly trees: LibraryTrees
  readonly library: Library
  readonly problems: readonly Problem[]
}

/** Files of a folder by their names in it. */
export type Files = ReadonlyMap<string, Buffer>

/** What runs share, read once. */
export type Ground = {
  /** A library of two procedures, in which most runs are made, and the project's own. */
  readonly small: Shelf
  readonly whole: Shelf
  readonly sources: readonly SourceItem[]
  readonly sourceIds: ReadonlySet<string>
  readonly assets: Omit<SiteAssets, 'words'>
  /** A small facility that brings along every kind of file, and the demos. */
  readonly facilities: Readonly<Record<FacilityName, Files>>
  /** An empty folder for the files of a run. */
  readonly folder: string
  readonly remove: () => Promise<void>
}

const demos = ['brambleford', 'ostmere', 'larkmoor'] as const
export type FacilityName = 'shaken' | (typeof demos)[number]

/** Checks a library, with all that is known to be wrong with it before any facility is. */
export function shelfOf(trees: LibraryTrees, sourceIds: ReadonlySet<string>): Result<Library> {
  const { value, problems } = checkLibrary(trees, sourceIds)
  return { value, problems: [...problems, ...(value ? libraryProblems(value) : [])] }
}

async function shelfIn(
  content: string,
  shared: string,
  sourceIds: ReadonlySet<string>,
): Promise<Shelf> {
  const { value: trees, problems } = await loadLibrary(content, shared)
  const checked = trees && shelfOf(trees, sourceIds)
  if (!trees || !checked?.value || problems.length > 0) throw new Error('the library has faults')
  return { trees, library: checked.value, problems: checked.problems }
}

async function filesIn(folder: string): Promise<Files> {
  const names = await readdir(folder, { recursive: true, withFileTypes: true })
  const files = names.filter((entry) => entry.isFile()).map((e) => path.join(e.parentPath, e.name))
  return new Map(
    await Promise.all(
      files
        .sort()
        .map(
          async (file) =>
            [path.relative(folder, file).split(path.sep).join('/'), await readFile(file)] as const,
        ),
    ),
  )
}

export async function prepareGround(): Promise<Ground> {
  const folders = projectFolders()
  const sources = await loadSources(folders.shared)
  const sourceIds = new Set(sources.map(({ id }) => id))
  const content = await smallLibrary()
  const [small, whole, templates, scripts, shaken, ...others] = await Promise.all([
    shelfIn(content, folders.shared, sourceIds),
    shelfIn(folders.content, folders.shared, sourceIds),
    loadTemplates(folders),
    loadScripts(folders),
    filesIn(path.join(folders.project, 'tests', 'fixtures', 'shaken')),
    ...demos.map((name) => filesIn(path.join(folders.content, 'facilities', name))),
  ])
  await rm(content, { recursive: true })
  const folder = await mkdtemp(path.join(os.tmpdir(), 'shaken-'))
  return {
    small,
    whole,
    sources,
    sourceIds,
    assets: { ...templates, scripts, fontCss: '', keeps: true },
    facilities: {
      shaken,
      ...(Object.fromEntries(demos.map((name, i) => [name, others[i]])) as Record<
        (typeof demos)[number],
        Files
      >),
    },
    folder,
    remove: () => rm(folder, { recursive: true, force: true }),
  }
}
