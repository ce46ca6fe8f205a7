import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { loadWorker } from '../../src/cli/load/load-scripts.ts'
import type { OutputFile } from '../../src/model/output-file.ts'
import { workerFile } from '../../src/render/site/kept-site.ts'
import { isKept } from '../../src/render/site/site-files.ts'
import { sha256 } from '../../src/write/build-record.ts'
import { writeFiles } from '../../src/write/write-files.ts'
import { demoManual, folders } from './demo.ts'
import { siteFiles } from './site-files.ts'

async function made(id: string): Promise<readonly OutputFile[]> {
  const { manual, words } = await demoManual(id)
  const files = await siteFiles(manual, words, folders, new Map())
  const [kept, asked] = [files.filter(isKept), files.filter((f) => !isKept(f))]
  return [...files, workerFile(await loadWorker(folders), kept, asked, sha256)]
}

/** Made once for all tests of a process. */
const sites = new Map<string, ReturnType<typeof made>>()

/** The site of a demo facility in a folder of its own, as it lies on a stick: without PDFs. */
export async function siteFolder(id: string) {
  const files = sites.get(id) ?? made(id)
  sites.set(id, files)
  const folder = await mkdtemp(path.join(os.tmpdir(), `site-${id}-`))
  await writeFiles(folder, await files)
  return { folder, remove: () => rm(folder, { recursive: true, force: true }) }
}
