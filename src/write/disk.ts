import { renameSync } from 'node:fs'
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
  | 'writeFile'
> & { readonly renameSync: typeof renameSync }

/** The disk of this computer. */
export const disk: Disk = { ...files, renameSync }

/** The system's name of what went wrong with a file, such as `ENOENT`. */
export const codeOf = (error: unknown): string | undefined =>
  (error as NodeJS.ErrnoException | undefined)?.code
