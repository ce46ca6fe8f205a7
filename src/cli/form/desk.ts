import { readdir, stat } from 'node:fs/promises'
import path from 'node:path'
import type { FormState, MakingEvent, OpenFolder } from '../../model/form-exchange.ts'
import { idFor } from '../../model/id-for.ts'
import { readYaml } from '../../read/read-yaml.ts'
import { writeFiles } from '../../write/write-files.ts'
import { facilitySchemaFile } from '../schemas.ts'
import type { Drafts } from './drafts.ts'
import { facilityFile, filesIn, type SavedFile, saveFacility, tagOf } from './facility-folder.ts'

/** Where a new facility is kept before it has a name: nowhere. */
const unnamed = 'new'

/** What was not saved, and why. */
type NotSaved = { readonly kind: 'failed'; readonly reason: 'no-name' | 'not-open' }

/** One person at work on one facility folder. */
export type Desk = {
  readonly state: () => Promise<FormState>
  /** Opens one of the folders of the state, or a new one; false where there is no such folder. */
  readonly choose: (folder: number | 'new') => Promise<boolean>
  readonly save: (text: string, seen: string) => Promise<SavedFile | NotSaved>
  readonly keep: (text: string) => Promise<void>
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
  const text = found.texts.get(facilityFile)
  const draft = await drafts.read(folder ?? unnamed)
  const workbooks = [...found.workbooks].map(
    ([name, bytes]) => [name, Buffer.from(bytes).toString('base64')] as const,
  )
  return {
    name: folder === undefined ? '' : path.basename(folder),
    where: folder ?? home,
    tag: tagOf(text),
    files: { ...Object.fromEntries(found.texts), [facilityFile]: text ?? '' },
    workbooks: Object.fromEntries(workbooks),
    ...(draft !== undefined && draft !== text && { draft }),
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

  const saved = async (text: string, seen: string): Promise<SavedFile | NotSaved> => {
    if (!isOpen) return { kind: 'failed', reason: 'not-open' }
    const isNew = folder === undefined
    const name = isNew ? nameIn(text) : ''
    if (isNew && name === '') return { kind: 'failed', reason: 'no-name' }
    const target = folder ?? (await newFolder(home, name))
    const result = await saveFacility(target, text, seen)
    if (result.kind !== 'saved') return result
    if (seen === tagOf(undefined)) await writeFiles(target, [facilitySchemaFile()])
    await drafts.keep(folder ?? unnamed, '')
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
    save: (text, seen) => {
      const result = before.then(() => saved(text, seen))
      before = result.catch(() => undefined)
      return result
    },
    keep: async (text) => {
      if (isOpen) await drafts.keep(folder ?? unnamed, text)
    },
    make: async (tell) => {
      if (folder !== undefined) site = (await given.makeManual(folder, tell)) ?? site
    },
    madeSite: () => site,
  }
}
