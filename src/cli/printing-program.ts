import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { hashOf } from '../write/build-record.ts'
import type { Folders } from './load/load-manual.ts'

/**
 * A hash over the program's own printing: what another state of it has printed is not taken from
 * the cache.
 */
export async function printingProgram(folders: Folders): Promise<string> {
  const root = path.join(folders.project, 'src', 'print')
  const names = (await readdir(root, { recursive: true })).filter((n) => n.endsWith('.ts'))
  const files = [
    ...names.map((n) => path.join(root, n)),
    path.join(folders.project, 'package-lock.json'),
  ]
  return hashOf(
    await Promise.all(
      files.map(async (file) => ({
        path: path.relative(folders.project, file),
        text: await readFile(file, 'utf8'),
      })),
    ),
  )
}
