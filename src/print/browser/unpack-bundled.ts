import { existsSync } from 'node:fs'
import { rename, rm } from 'node:fs/promises'
import path from 'node:path'
import { cacheFolder } from './cache-folder.ts'
import { chromiumEntry, chromiumVersion, executableIn, unpackChromium } from './chromium-package.ts'
import type { Machine } from './machine.ts'
import { ownFolder } from './own-folder.ts'

/**
 * Makes a folder of a cache once: `fill` works in a folder of its own, and one rename puts that in
 * place whole. Of two processes that do so at once the second drops what it has made.
 * @param isThere Whether the folder holds all that it should.
 */
export async function makeOnce(
  folder: string,
  isThere: (folder: string) => boolean,
  fill: (own: string) => Promise<void>,
): Promise<string> {
  if (isThere(folder)) return folder
  const own = await ownFolder(path.dirname(folder), 'unpack')
  try {
    await fill(own)
    await rename(own, folder)
  } catch (error) {
    await rm(own, { recursive: true, force: true })
    if (!isThere(folder)) throw error
  }
  return folder
}

/**
 * Unpacks the browser of the npm package once for each of its versions.
 *
 * Left to itself the package unpacks into the shared temporary folder, uses whatever lies there
 * under its name, and two processes at once meet a half-written program.
 * @returns the folder with `chromium`, its fonts and its libraries.
 */
export async function unpackBundled(machine: Machine): Promise<string> {
  const entry = chromiumEntry()
  const cache = await cacheFolder(machine)
  const folder = path.join(cache, `chromium-${await chromiumVersion(entry)}`)
  return makeOnce(
    folder,
    (f) => existsSync(executableIn(f)),
    (own) => unpackChromium(entry, own, machine.env),
  )
}
