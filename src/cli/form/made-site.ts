import { readFile, realpath } from 'node:fs/promises'
import path from 'node:path'
import { policy } from '../../render/site/render-site.ts'
import { pathBelow } from '../load/shown-path.ts'
import { type Answer, plain, typeOfFile } from '../loopback/guard.ts'

/** Below which path the manual lies that was made. */
export const madePath = '/made/'

const nothing = plain(404, 'There is no such page')

/**
 * A file of the manual that was made; folders are not listed.
 * @param asked The path, decoded.
 * @param site The folder `site/` of a manual.
 */
export async function madeFile(asked: string, site: string): Promise<Answer> {
  const name = asked.slice(madePath.length) || 'index.html'
  if (/[\\\0:]/.test(name) || name.split('/').some((part) => part === '' || part.startsWith('.')))
    return nothing
  try {
    const file = await realpath(path.join(site, name))
    if (pathBelow(await realpath(site), file) === undefined) return nothing
    const type = typeOfFile(name)
    return {
      status: 200,
      type,
      body: await readFile(file),
      headers: { 'content-security-policy': policy },
    }
  } catch {
    return nothing
  }
}
