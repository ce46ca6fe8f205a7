import { readdirSync, statSync } from 'node:fs'
import path from 'node:path'
import { facilityFolder } from '../folders.ts'
import type { Folders } from '../load/load-manual.ts'
import { readTree } from '../load/read-tree.ts'
import { withSlashes } from '../load/shown-path.ts'

/** A folder that holds the file of a facility. */
export type ListedFacility = {
  readonly folder: string
  /** As it is called on the terminal. */
  readonly shown: string
  /** Its id as its file says; where that cannot be read, the name of its folder. */
  readonly id: string
  readonly isReadable: boolean
}

/** What a list of folders holds. */
export type FacilityList = {
  /** In the order of their ids, each once. */
  readonly facilities: readonly ListedFacility[]
  /** Folders without a facility's file, and names without a folder. */
  readonly missing: readonly string[]
  /** Files beside the folders, such as a pattern of the shell brings along. */
  readonly files: readonly string[]
  /** Ids that several folders have, with these: their manuals would take each other's place. */
  readonly twice: readonly { readonly id: string; readonly folders: readonly string[] }[]
}

/** What there is of a name, as far as one may look. */
function stateOf(file: string): 'folder' | 'file' | undefined {
  try {
    return statSync(file).isDirectory() ? 'folder' : 'file'
  } catch {
    return undefined
  }
}

/** `fairs/*`: not every shell writes out what it stands for. */
function written(name: string, cwd: string): readonly string[] {
  const { dir, base } = path.parse(name)
  const parent = path.resolve(cwd, dir)
  if (base !== '*' || stateOf(path.resolve(cwd, name)) || stateOf(parent) !== 'folder')
    return [name]
  return readdirSync(parent)
    .filter((entry) => !entry.startsWith('.'))
    .map((entry) => path.join(dir, entry))
}

async function listed(folder: string, shown: string): Promise<ListedFacility> {
  const { value } = await readTree(folder, 'facility.yaml', '')
  const data = value?.data as { readonly id?: unknown } | undefined
  const isReadable = typeof data?.id === 'string'
  return { folder, shown, id: isReadable ? String(data.id) : path.basename(folder), isReadable }
}

const byId = (a: ListedFacility, b: ListedFacility): number => {
  const [one, other] = [`${a.id}\0${a.folder}`, `${b.id}\0${b.folder}`]
  return one < other ? -1 : Number(one > other)
}

/** Finds the facilities among what was named, before anything is made. */
export async function facilityList(
  named: readonly string[],
  cwd: string,
  folders: Folders,
): Promise<FacilityList> {
  const found = new Map<string, string>()
  const [missing, files]: [string[], string[]] = [[], []]
  for (const name of named.flatMap((n) => written(n, cwd))) {
    const folder = facilityFolder(name, cwd, folders)
    const shown = withSlashes(path.relative(cwd, folder)) || '.'
    if (stateOf(path.join(folder, 'facility.yaml')) === 'file') found.set(folder, shown)
    else if (stateOf(folder) === 'file') files.push(shown)
    else missing.push(shown)
  }
  const facilities: ListedFacility[] = []
  for (const [folder, shown] of found) facilities.push(await listed(folder, shown))
  facilities.sort(byId)
  const foldersOf = new Map<string, string[]>()
  for (const { id, shown, isReadable } of facilities)
    if (isReadable) foldersOf.set(id, [...(foldersOf.get(id) ?? []), shown])
  const twice = [...foldersOf].flatMap(([id, all]) =>
    all.length > 1 ? [{ id, folders: all }] : [],
  )
  return { facilities, missing, files, twice }
}
