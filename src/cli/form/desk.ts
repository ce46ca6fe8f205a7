import { readdir, stat } from 'node:fs/promises'
import path from 'node:path'
import { schemaLine } from '../../edit/schema-line.ts'
import {
  type DraftFiles,
  type FormState,
  facilityFile,
  type MakingEvent,
  type OpenFolder,
  savedFiles,
} from '../../model/form-exchange.ts'
import { idFor } from '../../model/id-for.ts'
import { readYaml } from '../../read/read-yaml.ts'
import { writeFiles } from '../../write/write-files.ts'
import { facilitySchemaFile } from '../schemas.ts'
import type { Drafts } from './drafts.ts'
import { filesIn, type SavedFile, saveFile, type ToSave, tagOf } from './facility-folder.ts'

/** Where a new facility is kept before it has a name: nowhere. */
const unnamed = 'new'

/** What was not saved, and why. */
type NotSaved = { readonly kind: 'failed'; readonly reason: 'no-name' | 'not-open' }

/** One person at work on one facility folder. */
export type Desk = {
  readonly state: () => Promise<FormState>
  /** Opens one of the folders of the state, or a new one; false where there is no such folder. */
  readonly choose: (folder: number | 'new') => Promise<boolean>
  readonly save: (file: ToSave) => Promise<SavedFile | NotSaved>
  readonly keep: (files: DraftFiles) => Promise<void>
  /** Makes the manual of what is saved. */
  readonly make: (tell: (event: MakingEvent) => void) => Promise<void>
  /** The folder `site/` of the manual that was made last. */
  readonly madeSite: () => string | undefined
}

export type DeskGiven = {
  /** The folder that was named; undefined where the page asks for one. */
  readonly folder: string | undefined
  /** Where new folders are made, and those are that are offered. */
  readonly home: string
  /** Further folders whose folders are offered. */
  readonly near: readonly string[]
  readonly drafts: Drafts
  /** Makes the manual of a folder; returns where it lies. */
  readonly makeManual: (
    folder: string,
    tell: (event: MakingEvent) => void,
  ) => Promise<string | undefined>
}

const isFacility = (folder: string): Promise<boolean> =>
  stat(path.join(folder, facilityFile)).then(
    (info) => info.isFile(),
    () => false,
  )

/** Folders below one that hold a facility file, by name. */
async function facilitiesIn(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder).catch(() => [])
  const folders = names.sort().map((name) => path.join(folder, name))
  const are = await Promise.all(folders.map(isFacility))
  return folders.filter((_, i) => are[i])
}

/** A folder below `home` for a fair of this name that is not there yet. */
async function newFolder(home: string, name: string): Promise<string> {
  for (let i = 1; ; i++) {
    const folder = path.join(home, i === 1 ? name : `${name}-${i}`)
    const isThere = await stat(folder).then(
      () => true,
      () => false,
    )
    if (!isThere) return folder
  }
}

/** What the folder of a new fair is called, from its own file; empty before it has a name. */
function nameIn(text: string): string {
  const { value } = readYaml({ path: facilityFile, text })
  const { id, name } = (value?.data ?? {}) as { readonly id?: unknown; readonly name?: unknown }
  const given = typeof id === 'string' ? idFor(id) : ''
  return given || (typeof name === 'string' ? idFor(name) : '')
}

const nothing: Awaited<ReturnType<typeof filesIn>> = { texts: new Map(), workbooks: new Map() }

/** @param folder undefined for a new facility that has no name yet. */
async function opened(
  folder: string | undefined,
  { drafts, home }: DeskGiven,
): Promise<OpenFolder> {
  const found = folder === undefined ? nothing : await filesIn(folder)
  const kept = Object.entries(await drafts.read(folder ?? unnamed))
  const draft = kept.filter(([name, text]) => text !== found.texts.get(name))
  const tags = savedFiles.map((name) => [name, tagOf(found.texts.get(name))] as const)
  const workbooks = [...found.workbooks].map(
    ([name, bytes]) => [name, Buffer.from(bytes).toString('base64')] as const,
  )
  return {
    name: folder === undefined ? '' : path.basename(folder),
    where: folder ?? home,
    tags: Object.fromEntries(tags),
    files: { [facilityFile]: '', ...Object.fromEntries(found.texts) },
    workbooks: Object.fromEntries(workbooks),
    ...(draft.length > 0 && { draft: Object.fromEntries(draft) }),
    // Its schema is written beside it.
    head: `${schemaLine}\n`,
  }
}

/** The desk of one run of the program. What is saved is saved one after the other. */
export function createDesk(given: DeskGiven): Desk {
  const { home, near, drafts } = given
  let folder: string | undefined = given.folder
  let isOpen = folder !== undefined
  let offered: readonly string[] = []
  let site: string | undefined
  let before: Promise<unknown> = Promise.resolve()

  /** What is left of a draft once one of its files is saved; a new fair's goes into its folder. */
  const drop = async (name: string, target: string): Promise<void> => {
    const { [name]: _saved, ...left } = await drafts.read(folder ?? unnamed)
    if (folder === undefined) await drafts.keep(unnamed, {})
    await drafts.keep(target, left)
  }

  const saved = async (file: ToSave): Promise<SavedFile | NotSaved> => {
    if (!isOpen) return { kind: 'failed', reason: 'not-open' }
    const isNew = folder === undefined
    // The facility file says how the folder of a new fair is called.
    const name = isNew && file.name === facilityFile ? nameIn(file.text) : ''
    if (isNew && name === '') return { kind: 'failed', reason: 'no-name' }
    const target = folder ?? (await newFolder(home, name))
    const result = await saveFile(target, file)
    if (result.kind !== 'saved') return result
    if (file.name === facilityFile && file.seen === tagOf(undefined))
      await writeFiles(target, [facilitySchemaFile()])
    await drop(file.name, target)
    folder = target
    return result
  }

  return {
    state: async () => {
      if (isOpen) return { open: await opened(folder, given), folders: [] }
      offered = [...new Set((await Promise.all([home, ...near].map(facilitiesIn))).flat())]
      return { folders: offered.map((f) => ({ name: path.basename(f), where: f })) }
    },
    choose: async (choice) => {
      const chosen = choice === 'new' ? undefined : offered[choice]
      if (isOpen || (choice !== 'new' && chosen === undefined)) return false
      folder = chosen
      isOpen = true
      return true
    },
    save: (file) => {
      const result = before.then(() => saved(file))
      before = result.catch(() => undefined)
      return result
    },
    keep: async (files) => {
      if (isOpen) await drafts.keep(folder ?? unnamed, files)
    },
    make: async (tell) => {
      if (folder !== undefined) site = (await given.makeManual(folder, tell)) ?? site
    },
    madeSite: () => site,
  }
}
