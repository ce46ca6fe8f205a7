import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import { lastBinder } from '../../../src/cli/last-binder.ts'
import { printCache } from '../../../src/print/press/print-cache.ts'
import { buildRecord, hashedOnce } from '../../../src/write/build-record.ts'
import { lastBuild, printedFiles } from '../../../src/write/last-build.ts'
import { mutate } from '../mutations/mutate.ts'
import type { Subject } from './subject.ts'

/** What is kept of a print: pages as bytes, and what was measured. */
const print = () => ({
  pdf: new Uint8Array(Array.from({ length: 300 }, (_, i) => (i * 37) % 251)),
  pages: 3,
  capitals: { seal: 4.5, water: 4.1 },
})

/** A print that was kept, changed on the disk: it is made again, or taken as it was. */
export const prints: Subject = async ({ folder }, chance) => {
  const root = path.join(folder, 'prints')
  try {
    const cache = printCache(root)
    await cache.get(['style', 'body'], async () => print())
    const name = (await readdir(root, { recursive: true })).find((n) => /\w{64}$/.test(n)) ?? ''
    const kept = path.join(root, name)
    const { file, by } = mutate(await readFile(kept), 'bytes', chance)
    await writeFile(kept, file)
    const value = await cache.get(['style', 'body'], async () => print())
    const faults = isDeepStrictEqual(value, print()) ? [] : ['another print than was made']
    return { file: 'a print', by, ending: 'unharmed', faults }
  } finally {
    await rm(root, { recursive: true, force: true })
  }
}

const laid = (revision: string) => ({
  revision,
  date: '2027-06-14',
  pages: [{ label: '1-1', print: 'a1b2' }],
})

const hashed = hashedOnce()

const record = buildRecord({
  facility: 'shaken',
  date: '2027-06-14',
  toolVersion: '0.1.0',
  browser: 'none',
  contentHash: '00',
  facilityHash: '00',
  counts: { pages: 1, figures: 2, estimates: 1, findings: 0, worksheets: 2, procedures: 2 },
  binder: {
    labels: { seal: '3-1' },
    pages: { seal: 7 },
    ...{ revision: laid('2') },
    before: laid('1'),
  },
  sheets: [{ id: 'seal', paper: 'letter', pages: 1, capitals: 4.5 }],
  fieldBook: { pages: 24 },
  older: undefined,
  files: [
    { path: 'binder.pdf', ...hashed('binder') },
    { path: 'sheets/seal.pdf', ...hashed('sheet') },
  ],
})

/** The record of a build, changed: what it names stays below its folder. */
export const buildRecords: Subject = async ({ folder }, chance) => {
  const root = path.join(folder, 'dist', 'shaken')
  try {
    await mkdir(path.join(root, 'sheets'), { recursive: true })
    await writeFile(path.join(folder, 'zq.pdf'), 'zq')
    await writeFile(path.join(root, 'binder.pdf'), 'binder')
    await writeFile(path.join(root, 'sheets', 'seal.pdf'), 'sheet')
    const { file, by } = mutate(Buffer.from(record), 'entries', chance)
    await writeFile(path.join(root, 'build.json'), file)
    const last = await lastBuild(root)
    await lastBinder(root)
    const outside = [...(last?.files ?? [])].filter(
      (name) => !path.resolve(root, name).startsWith(`${root}${path.sep}`),
    )
    if (last) await printedFiles(root, last)
    return {
      file: 'build.json',
      by,
      ending: last ? 'made' : 'refused',
      faults: outside.map((name) => `a file outside: ${name}`),
    }
  } finally {
    await rm(path.join(folder, 'dist'), { recursive: true, force: true })
  }
}
