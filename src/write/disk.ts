import { renameSync, rmSync, writeFileSync } from 'node:fs'
import * as files from 'node:fs/promises'

/** The file operations with which a manual is written; tests give some that fail. */
export type Disk = Pick<
  typeof files,
  | 'chmod'
  | 'copyFile'
  | 'mkdir'
  | 'readdir'
  | 'readFile'
  | 'readlink'
  | 'realpath'
  | 'rm'
  | 'stat'
  | 'symlink'
> & {
  readonly writeFile: (file: string, data: string | Uint8Array) => Promise<void>
  readonly renameSync: typeof renameSync
}

/**
 * The disk of this computer. Of many small files each is written, and deleted, in a fraction of the
 * time that it takes to hand it to another thread and wait for that; nothing else is to be done
 * meanwhile.
 */
export const disk: Disk = {
  ...files,
  writeFile: async (file, data) => writeFileSync(file, data),
  rm: async (file, options) => rmSync(file, options),
  renameSync,
}

/** The system's name of what went wrong with a file, such as `ENOENT`. */
export const codeOf = (error: unknown): string | undefined =>
  (error as NodeJS.ErrnoException | undefined)?.code
