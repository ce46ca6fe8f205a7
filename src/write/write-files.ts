import path from 'node:path'
import type { OutputFile } from '../model/output-file.ts'
import { type Disk, disk } from './disk.ts'

/** The system names no file where the disk is full. */
const writeOne = (file: string, data: OutputFile['data'], on: Disk): Promise<void> =>
  on.writeFile(file, data).catch((error: unknown) => {
    throw Object.assign(error as Error, { path: file })
  })

/** Writes files below a folder, making the folders that they need. Nothing is written after a failure is told. */
export async function writeFiles(
  root: string,
  files: readonly OutputFile[],
  on: Disk = disk,
): Promise<void> {
  const folders = new Set(files.map((f) => path.dirname(path.join(root, f.path))))
  for (const folder of folders) await on.mkdir(folder, { recursive: true })
  const written = await Promise.allSettled(
    files.map((f) => writeOne(path.join(root, f.path), f.data, on)),
  )
  for (const one of written) if (one.status === 'rejected') throw one.reason
}
