import { mkdir, readFile, rm } from 'node:fs/promises'
import path from 'node:path'
import { replaceFile, tagOf } from './facility-folder.ts'

/**
 * What was typed and not yet saved, kept in the user's own cache: each start has another port, so a
 * browser would not find again what it has kept itself.
 */
export type Drafts = {
  readonly read: (folder: string) => Promise<string | undefined>
  /** An empty text removes it. */
  readonly keep: (folder: string, text: string) => Promise<void>
}

/** @param cache The user's cache; without one nothing is kept. */
export function draftsIn(cache: string | undefined): Drafts {
  if (cache === undefined)
    return { read: () => Promise.resolve(undefined), keep: () => Promise.resolve() }
  const drafts = path.join(cache, 'drafts')
  const fileOf = (folder: string): string => path.join(drafts, `${tagOf(folder)}.yaml`)
  return {
    read: (folder) => readFile(fileOf(folder), 'utf8').catch(() => undefined),
    keep: async (folder, text) => {
      if (text === '') return rm(fileOf(folder), { force: true })
      await mkdir(drafts, { recursive: true, mode: 0o700 })
      return replaceFile(fileOf(folder), text)
    },
  }
}
