import { mkdir, readdir, symlink } from 'node:fs/promises'
import path from 'node:path'
import { cacheFolder } from '../../src/print/browser/cache-folder.ts'
import { thisMachine } from '../../src/print/browser/machine.ts'

/**
 * An environment with a cache of its own, which holds nothing but the browser: to unpack that once more
 * would take longer than much of what is tested.
 * @param folder Where the cache is made.
 */
export async function ownCache(folder: string): Promise<NodeJS.ProcessEnv> {
  const own = path.join(folder, 'ovalkeep')
  await mkdir(own, { recursive: true, mode: 0o700 })
  const cache = await cacheFolder(thisMachine(process.env))
  for (const name of (await readdir(cache)).filter((n) => n.startsWith('chromium')))
    await symlink(path.join(cache, name), path.join(own, name))
  return { ...process.env, XDG_CACHE_HOME: folder }
}
