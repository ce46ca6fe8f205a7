import path from 'node:path'
import { millisecondsPerDay } from '../model/day.ts'
import { runsStill, thisOwner } from '../print/browser/owner.ts'
import { type Disk, disk } from './disk.ts'

/**
 * What lies beside a folder while it is replaced: the new one as long as it is not whole, the old one
 * once it was moved aside (always whole), and what only waits to be deleted.
 */
type State = 'new' | 'old' | 'gone'

const stagedName = /^\.(new|old|gone)-(.+)-(\d+\.[0-9a-f]{8})\.\d+$/

/** Names that are in use by this process. Others with its number are of a process that has ended. */
const inUse = new Set<string>()
let taken = 0

/** A name for this process beside a folder; `release` when it has done its work. */
export function stagedFolder(target: string, state: State) {
  const name = `.${state}-${path.basename(target)}-${thisOwner}.${taken++}`
  inUse.add(name)
  return { folder: path.join(path.dirname(target), name), release: () => inUse.delete(name) }
}

/** Whether a folder has been left behind: nobody works on it any more. */
async function isLeft(folder: string, owner: string, on: Disk): Promise<boolean> {
  if (owner === thisOwner) return !inUse.has(path.basename(folder))
  const runs = runsStill(owner)
  if (runs !== undefined) return !runs
  // Of another computer: no build takes a day over its files.
  const about = await on.stat(folder).catch(() => undefined)
  return about !== undefined && Date.now() - about.mtimeMs > millisecondsPerDay
}

/** Lets folders be emptied that somebody has made read-only. */
async function unlock(folder: string, on: Disk): Promise<void> {
  await on.chmod(folder, 0o700)
  for (const entry of await on.readdir(folder, { withFileTypes: true }))
    if (entry.isDirectory()) await unlock(path.join(folder, entry.name), on)
}

/** Deletes a folder, or as much of it as can be: what stays is tried again by the next build. */
async function removeFolder(folder: string, on: Disk = disk): Promise<void> {
  const remove = (): Promise<void> => on.rm(folder, { recursive: true, force: true })
  await remove()
    .catch(async () => {
      await unlock(folder, on)
      await remove()
    })
    .catch(() => undefined)
}

/**
 * Puts right what killed builds may have left: a last good folder that was moved aside and not yet
 * replaced comes back, half-written and half-deleted ones go. Folders of builds that still run are
 * left alone. What cannot be put right is left to the next build.
 */
export async function recoverFolders(parent: string, on: Disk = disk): Promise<void> {
  const names = await on.readdir(parent).catch((): string[] => [])
  for (const name of names) {
    const [, state, id = '', owner = ''] = stagedName.exec(name) ?? []
    if (state === undefined) continue
    const staged = path.join(parent, name)
    if (state === 'old' && !names.includes(id) && putBack(staged, path.join(parent, id), on))
      continue
    if (state === 'gone' || (await isLeft(staged, owner, on))) await discard(staged, on)
  }
}

/**
 * Gives an old folder its name back, where nobody has it now. A build that still runs loses nothing
 * by it: it moves the folder aside once more.
 */
export function putBack(old: string, target: string, on: Disk): boolean {
  try {
    on.renameSync(old, target)
    return true
  } catch {
    return false
  }
}

/**
 * Deletes a folder under a name that nobody takes for whole: where that ends half-way, what is left
 * never comes back. What cannot be moved there stays for the next build.
 */
export async function discard(folder: string, on: Disk = disk): Promise<void> {
  const name = path.basename(folder).replace(/^\.(?:new|old)-/, '.gone-')
  const gone = path.join(path.dirname(folder), name)
  if (gone !== folder) {
    await removeFolder(gone, on)
    try {
      on.renameSync(folder, gone)
    } catch {
      return
    }
  }
  await removeFolder(gone, on)
}
