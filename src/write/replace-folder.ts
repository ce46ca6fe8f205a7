import path from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { codeOf, type Disk, disk } from './disk.ts'
import { discard, putBack, recoverFolders, stagedFolder } from './staged-folders.ts'

/** What a folder is filled with. */
export type Filling = {
  /** Writes all there is to be into a new, empty folder. */
  readonly fill: (staging: string) => Promise<void>
  /**
   * Takes from the folder that was replaced what somebody has put there since it was last looked at.
   * @param old The old folder, under the name to which it was moved aside.
   */
  readonly settle?: (old: string) => Promise<void>
}

/** Codes of a folder in which a file is open elsewhere; on Windows any program that looks is enough. */
const isHeld = (error: unknown): boolean =>
  ['EBUSY', 'EPERM', 'EACCES'].includes(codeOf(error) ?? '')

/** Codes of a name that a whole folder has already. */
const isTaken = (error: unknown): boolean => ['ENOTEMPTY', 'EEXIST'].includes(codeOf(error) ?? '')

/** How long is waited for whoever holds a file, ms, a little longer each time. */
const waits = [50, 100, 200, 400, 800]

/** How often others that replace the same folder at the same time are let go first. */
const mostOthers = 20

/**
 * Moves the target aside, where there is one, and puts the new folder in its place: two renames with
 * nothing between them. Should the second fail, the first is undone.
 */
function swap(staging: string, target: string, aside: string, on: Disk): void {
  try {
    on.renameSync(target, aside)
  } catch (error) {
    if (codeOf(error) !== 'ENOENT') throw error
  }
  try {
    on.renameSync(staging, target)
  } catch (error) {
    putBack(aside, target, on)
    throw error
  }
}

/** Tries a swap until what is in its way has gone, or stays. */
async function swapSoon(swapOnce: () => void, clear: () => Promise<void>): Promise<void> {
  for (let times = 0; ; times++) {
    try {
      swapOnce()
      return
    } catch (error) {
      const longer = waits[times]
      // Another build has put its own there between the two renames; that goes aside next.
      if (isTaken(error) && times < mostOthers) await clear()
      else if (isHeld(error) && longer !== undefined) await wait(longer)
      else throw error
    }
  }
}

/** Whoever is told of a file knows the folder by the name that it was to have. */
function withName(error: unknown, staging: string, target: string): unknown {
  const { path: at } = error as NodeJS.ErrnoException
  return typeof at === 'string' && at.startsWith(staging)
    ? Object.assign(error as Error, { path: target + at.slice(staging.length) })
    : error
}

/**
 * Writes a whole folder in one step: `fill` works in a new folder beside the target, which takes
 * its place only when all is there. When anything fails or the process is killed, the target stays
 * as it was; a kill exactly between the two renames leaves the old one whole under a name of its own,
 * and the next build brings it back. Of several processes that replace the same folder, each puts
 * there a whole one, and the last stays.
 */
export async function replaceFolder(
  named: string,
  { fill, settle }: Filling,
  on: Disk = disk,
): Promise<void> {
  await on.mkdir(path.dirname(named), { recursive: true })
  // A link to a folder elsewhere stays one.
  const target = await on.realpath(named).catch(() => named)
  await recoverFolders(path.dirname(target), on)
  const [staging, aside] = [stagedFolder(target, 'new'), stagedFolder(target, 'old')]
  const isThere = (): Promise<boolean> =>
    on.stat(target).then(
      () => true,
      () => false,
    )
  const putBackIfMissing = async (): Promise<void> => {
    if (!(await isThere())) putBack(aside.folder, target, on)
  }
  /** Deletes nothing before something whole has its place. */
  const clear = async (): Promise<void> => {
    await putBackIfMissing()
    await settle?.(aside.folder)
    await discard(aside.folder, on)
  }
  try {
    await on.mkdir(staging.folder)
    await fill(staging.folder)
    await swapSoon(() => swap(staging.folder, target, aside.folder, on), clear)
    await clear()
  } catch (error) {
    throw withName(error, staging.folder, target)
  } finally {
    await putBackIfMissing()
    await discard(staging.folder, on)
    staging.release()
    aside.release()
  }
}
