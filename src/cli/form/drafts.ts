import { mkdir, readFile, rm } from 'node:fs/promises'
import path from 'node:path'
import { type DraftFiles, draftFiles } from '../../model/form-exchange.ts'
import { replaceFile, tagOf } from './facility-folder.ts'

/**
 * What was typed and not yet saved, kept in the user's own cache: each start has another port, so a
 * browser would not find again what it has kept itself.
 */
export type Drafts = {
  readonly read: (folder: string) => Promise<DraftFiles>
  /** One without files is removed. */
  readonly keep: (folder: string, files: DraftFiles) => Promise<void>
}

/** What a draft says; nothing where somebody has changed it so that it cannot be read. */
function textsIn(text: string): DraftFiles {
  try {
    return draftFiles(JSON.parse(text))
  } catch {
    return {}
  }
}

/** @param cache The user's cache; without one nothing is kept. */
export function draftsIn(cache: string | undefined): Drafts {
  if (cache === undefined) return { read: () => Promise.resolve({}), keep: () => Promise.resolve() }
  const drafts = path.join(cache, 'drafts')
  const fileOf = (folder: string): string => path.join(drafts, `${tagOf(folder)}.json`)
  return {
    read: (folder) =>
      readFile(fileOf(folder), 'utf8').then(
        (text) => textsIn(text),
        () => ({}),
      ),
    keep: async (folder, files) => {
      if (Object.keys(files).length === 0) return rm(fileOf(folder), { force: true })
      await mkdir(drafts, { recursive: true, mode: 0o700 })
      return replaceFile(fileOf(folder), JSON.stringify(files))
    },
  }
}
