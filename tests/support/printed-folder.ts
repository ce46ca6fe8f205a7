import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import type { TestProject } from 'vitest/node'

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the printed demos of one run of the tests are put. */
    printedFolder: string
  }
}

/** Gives all tests of one run a folder for what they print together. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'printed-'))
  project.provide('printedFolder', folder)
  return () => rm(folder, { recursive: true, force: true })
}
