import { constants } from 'node:fs'
import { access, lstat, mkdir } from 'node:fs/promises'
import { homedir, tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Environment } from './candidate.ts'

/**
 * A program is unpacked here and later run, so a folder that somebody else owns or may write to is
 * refused: in a shared temporary folder its name could have been taken in advance.
 */
const ownFolder = async (folder: string): Promise<boolean> => {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 })
    await access(folder, constants.W_OK)
    const { uid, mode } = await lstat(folder)
    return uid === process.getuid?.() && (mode & 0o022) === 0
  } catch {
    return false
  }
}

/**
 * The folder in which things are kept from one run to the next: XDG_CACHE_HOME, else `.cache` in
 * the home folder, else, where the home cannot be written, the temporary folder.
 * @throws Error when none of them is ours to write.
 */
export const cacheFolder = async (env: Environment): Promise<string> => {
  const user = process.getuid?.() ?? 'user'
  const places = [
    join(env['XDG_CACHE_HOME'] || join(env['HOME'] || homedir(), '.cache'), 'ovalkeep'),
    join(tmpdir(), `ovalkeep-${user}`),
  ]
  for (const place of places) if (await ownFolder(place)) return place
  throw new Error(
    `no folder to unpack into: ${places.join(' and ')} cannot be written or belong to another user`,
  )
}
