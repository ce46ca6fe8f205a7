import { mkdtemp, readdir, rm } from 'node:fs/promises'
import path from 'node:path'
import { runsStill, thisOwner } from './owner.ts'

/** Folders of processes that have ended without deleting them. */
async function leftFolders(parent: string, prefix: string): Promise<readonly string[]> {
  const names = await readdir(parent).catch((): string[] => [])
  return names
    .filter((name) => name.startsWith(`${prefix}-`))
    .filter((name) => runsStill(name.slice(prefix.length + 1).split('-')[0] ?? '') === false)
    .map((name) => path.join(parent, name))
}

/**
 * Makes a folder of this process's own, and deletes those of the same kind that killed processes have
 * left.
 */
export async function ownFolder(parent: string, prefix: string): Promise<string> {
  for (const left of await leftFolders(parent, prefix))
    await rm(left, { recursive: true, force: true }).catch(() => undefined)
  return mkdtemp(path.join(parent, `${prefix}-${thisOwner}-`))
}
