import { constants } from 'node:fs'
import { access, lstat, mkdir } from 'node:fs/promises'
import { type Machine, pathsOf } from './machine.ts'

/** The folder in which programs of this user keep what can be made again. */
function userCache({ platform, env, home }: Machine): string {
  const { join } = pathsOf({ platform })
  if (env['XDG_CACHE_HOME']) return env['XDG_CACHE_HOME']
  if (platform === 'win32') return env['LOCALAPPDATA'] || join(home, 'AppData', 'Local')
  return platform === 'darwin' ? join(home, 'Library', 'Caches') : join(home, '.cache')
}

/**
 * Where things are kept from one run to the next, in the order in which the places are tried: the
 * user's own cache, else, where the home cannot be written, the temporary folder.
 */
export function cachePlaces(machine: Machine): readonly string[] {
  const { join } = pathsOf(machine)
  // On Windows every user has a temporary folder of his own; elsewhere all share one.
  const name = machine.user === undefined ? 'ovalkeep' : `ovalkeep-${machine.user}`
  return [join(userCache(machine), 'ovalkeep'), join(machine.temporary, name)]
}

/**
 * A program is unpacked into the folder and later run, so one that somebody else owns or may write
 * to is refused: in a shared temporary folder its name could have been taken in advance. Windows
 * knows neither owner nor mode; there both places lie in the user's own profile, which others may
 * not write.
 */
export const isPrivate = (
  folder: { readonly uid: number; readonly mode: number },
  { user }: Pick<Machine, 'user'>,
): boolean => user === undefined || (folder.uid === user && (folder.mode & 0o022) === 0)

async function isOurs(folder: string, machine: Machine): Promise<boolean> {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 })
    await access(folder, constants.W_OK)
    return isPrivate(await lstat(folder), machine)
  } catch {
    return false
  }
}

/**
 * The first of the places that is ours to write; made where it is missing.
 * @throws Error when none of them is.
 */
export async function cacheFolder(machine: Machine): Promise<string> {
  const places = cachePlaces(machine)
  for (const place of places) if (await isOurs(place, machine)) return place
  throw new Error(
    `no folder to unpack into: ${places.join(' and ')} cannot be written or belong to another user`,
  )
}
