import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { carryOver } from '../../src/write/carry-over.ts'
import { type Disk, disk } from '../../src/write/disk.ts'
import { replaceFolder } from '../../src/write/replace-folder.ts'
import { writeFiles } from '../../src/write/write-files.ts'
import { type Failing, failingDisk } from '../support/failing-disk.ts'

let parent: string
const target = (): string => path.join(parent, 'fair')

beforeEach(async () => {
  parent = await mkdtemp(path.join(os.tmpdir(), 'death-'))
})
afterEach(() => rm(parent, { recursive: true }))

const files = ['page', 'site/index.html', 'site/a/b.html'].map((name) => ({
  path: name,
  data: `new ${name}`,
}))

/** A build as it writes: over a folder with an old manual and a photo of somebody else. */
async function write(on: Disk): Promise<void> {
  const names = {
    ours: new Set(files.map((f) => f.path)),
    made: new Set(files.map((f) => f.path)),
    carried: new Map<string, string>(),
  }
  await replaceFolder(
    target(),
    {
      fill: async (staging) => {
        await writeFiles(staging, files, on)
        await carryOver(target(), staging, names, on)
      },
      settle: (old) => carryOver(old, target(), names, on),
    },
    on,
  )
}

async function oldManual(): Promise<void> {
  await rm(parent, { recursive: true })
  await writeFiles(target(), [
    ...files.map((f) => ({ path: f.path, data: `old ${f.path}` })),
    { path: 'site/photo.jpg', data: 'theirs' },
  ])
}

/** Which manual a folder holds; fails unless it is a whole one, with the photo. */
async function whole(folder: string): Promise<'old' | 'new'> {
  const first = String(await readFile(path.join(folder, 'page'))).slice(0, 3)
  for (const { path: name } of files)
    expect(await readFile(path.join(folder, name), 'utf8')).toBe(`${first} ${name}`)
  expect(await readFile(path.join(folder, 'site/photo.jpg'), 'utf8')).toBe('theirs')
  return first === 'old' ? 'old' : 'new'
}

/** How many operations a build takes that nothing goes wrong with. */
async function operations(): Promise<number> {
  await oldManual()
  const { disk: counted, count } = failingDisk(undefined)
  await write(counted)
  return count()
}

/** What came of a build with a failing operation, for each of them in turn. */
async function each(
  failing: (at: number) => Failing,
  check: (at: number, error: unknown) => Promise<void>,
) {
  const all = await operations()
  expect(all).toBeGreaterThan(20)
  for (let at = 1; at <= all; at++) {
    await oldManual()
    const error = await write(failingDisk(failing(at)).disk).then(
      () => undefined,
      (e: unknown) => e,
    )
    await check(at, error)
  }
}

describe('a build whose n-th file operation fails, for every n', () => {
  it.each(['ENOSPC', 'EIO', 'EBUSY', 'EPERM', 'EACCES', 'EROFS', 'ENOTEMPTY', 'ENOENT'])(
    '(%s) leaves a whole manual, the new one where it says so, and nothing that stays',
    async (code) => {
      let old = 0
      await each(
        (at) => ({ at, how: 'fails', code }),
        async (at, error) => {
          const found = await whole(target())
          if (error === undefined) expect(`${at} ${found}`).toBe(`${at} new`)
          else if (found === 'old') old++
          await write(disk)
          expect(await whole(target())).toBe('new')
          expect(await readdir(parent)).toEqual(['fair'])
        },
      )
      if (code === 'ENOSPC') expect(old).toBeGreaterThan(5)
    },
  )
})

describe('a build that ends at its n-th file operation, for every n', () => {
  it.each(['ends-before', 'ends-in', 'ends-after'] as const)(
    '(%s) leaves a whole manual, and the next one cleans up',
    async (how) => {
      let between = 0
      await each(
        (at) => ({ at, how }),
        async () => {
          const names = await readdir(parent)
          if (!names.includes('fair')) {
            // Exactly between the two renames: the old one is whole beside its place.
            between++
            const old = names.find((name) => name.startsWith('.old-fair-')) ?? ''
            expect(await whole(path.join(parent, old))).toBe('old')
          } else await whole(target())
          // Whatever the next build is of.
          await replaceFolder(path.join(parent, 'other'), {
            fill: (staging) => writeFile(path.join(staging, 'page'), 'x'),
          })
          expect((await readdir(parent)).sort()).toEqual(['fair', 'other'])
          await whole(target())
          await write(disk)
          expect(await whole(target())).toBe('new')
        },
      )
      expect(between).toBeLessThanOrEqual(1)
    },
  )
})
