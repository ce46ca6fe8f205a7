import path from 'node:path'
import { writeFiles } from '../write/write-files.ts'
import { projectFolders } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { loadMakerPage } from './load/load-form-page.ts'
import { unwritable } from './user-fault.ts'

export type MakerOptions = {
  /** The folder to write into, as typed. */
  readonly into?: string
}

const file = 'maker.html'

/**
 * Writes the page that makes manuals by itself: one file, opened from disk or put on a web host, for
 * people who install nothing.
 */
export async function maker({ into }: MakerOptions, io: Io): Promise<ExitCode> {
  const folders = projectFolders()
  const target = into === undefined ? folders.dist : path.resolve(io.cwd, into)
  const closed = await unwritable(target)
  if (closed !== undefined) {
    io.err(closed)
    return exit.unwritable
  }
  const { html } = await loadMakerPage(folders)
  await writeFiles(target, [{ path: file, data: html }])
  const shown = path.relative(io.cwd, path.join(target, file))
  const size = (Buffer.byteLength(html) / 1_000_000).toFixed(1)
  io.out(`${shown} (${size} MB): open it in a browser, send it, or put it on a web host.`)
  return exit.fine
}
