import { mkdir, rm, stat } from 'node:fs/promises'
import path from 'node:path'
import { stagedFolder } from '../write/staged-folders.ts'

const isSystemError = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && typeof (error as NodeJS.ErrnoException).code === 'string'

/** What has gone wrong outside the program, and what to do, by the code of the system. */
const said: Readonly<Record<string, (where: string) => string>> = {
  EACCES: (where) =>
    `There is no permission to use ${where}. Choose another folder with --into, or ask whoever owns it.`,
  EPERM: (where) =>
    `${where} cannot be changed: it belongs to somebody else, or a file in it is open in another program. Close it, or choose another folder with --into.`,
  EBUSY: (where) => `${where} is open in another program. Close it there and try again.`,
  EROFS: (where) =>
    `${where} lies on a disk that can only be read. Choose another folder with --into.`,
  ENOSPC: (where) =>
    `The disk is full: ${where} could not be written. Make room and try again; what was there before still is.`,
  EDQUOT: (where) =>
    `Your share of the disk is used up: ${where} could not be written. Make room and try again; what was there before still is.`,
  ENAMETOOLONG: (where) =>
    `A name is too long for this disk: ${where}. Shorten the id in facility.yaml, or choose a folder with a shorter path with --into.`,
  ENOTDIR: (where) => `${where} leads through a file where a folder was meant.`,
  EEXIST: (where) =>
    `${where} is a file where a folder was meant. Choose another folder with --into.`,
  EMFILE: () => 'Too many files are open on this computer. Close other programs and try again.',
  ENFILE: () => 'Too many files are open on this computer. Close other programs and try again.',
  ENOTEMPTY: (where) =>
    `${where} changed while it was being replaced: another program writes into it. Try again when it has ended.`,
}

/**
 * What to tell of a fault that lies outside the program (disk, permissions, names); undefined for one
 * of the program itself.
 */
export function userFault(error: unknown): string | undefined {
  if (!isSystemError(error)) return undefined
  const where = error.path ?? 'a file'
  return said[error.code ?? '']?.(where)
}

/** The folder itself, or the nearest one above it that is there. */
async function nearestFolder(folder: string): Promise<string> {
  try {
    const found = await stat(folder)
    if (found.isDirectory()) return folder
    throw Object.assign(new Error('a file'), { code: 'EEXIST', path: folder })
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    const up = path.dirname(folder)
    if ((code !== 'ENOENT' && code !== 'ENOTDIR') || up === folder) throw error
    return nearestFolder(up)
  }
}

/**
 * Tries whether files can be made in a folder, or where it would be made, and leaves nothing behind.
 * @returns Why not, in words; undefined where they can.
 */
export async function unwritable(folder: string): Promise<string | undefined> {
  let trial: ReturnType<typeof stagedFolder> | undefined
  try {
    // Should this process end just now, the next build clears it away.
    trial = stagedFolder(path.join(await nearestFolder(folder), 'trial'), 'gone')
    await mkdir(trial.folder)
    await rm(trial.folder, { recursive: true, force: true })
    return undefined
  } catch (error) {
    // Where the trial itself has a name, the folder is what matters.
    return userFault(Object.assign(error as Error, { path: folder })) ?? String(error)
  } finally {
    trial?.release()
  }
}
