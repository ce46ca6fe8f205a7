import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { OutputFile } from '../model/output-file.ts'

/** Writes files below a folder, making the folders that they need. */
export async function writeFiles(root: string, files: readonly OutputFile[]): Promise<void> {
  const folders = new Set(files.map((f) => path.dirname(path.join(root, f.path))))
  for (const folder of folders) await mkdir(folder, { recursive: true })
  await Promise.all(files.map((f) => writeFile(path.join(root, f.path), f.data)))
}
