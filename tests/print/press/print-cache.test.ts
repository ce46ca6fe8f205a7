import { mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { printCache } from '../../../src/print/press/print-cache.ts'

const filesIn = async (folder: string): Promise<string[]> =>
  (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((e) => e.isFile())
    .map((e) => path.join(e.parentPath, e.name))

let folder: string
beforeEach(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'prints-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

describe('what was printed before', () => {
  it('is taken again for the same parts, and made anew when one of them changes', async () => {
    const cache = printCache(folder)
    let made = 0
    const make = async () => ({ n: ++made, bytes: new Uint8Array([1, 2]) })
    const first = await cache.get(['a', new Uint8Array([7])], make)
    const second = await cache.get(['a', new Uint8Array([7])], make)
    expect({ ...second, bytes: [...second.bytes] }).toEqual({ ...first, bytes: [...first.bytes] })
    expect((await cache.get(['a', new Uint8Array([8])], make)).n).toBe(2)
    // Parts are told apart by where one ends.
    expect((await cache.get(['ab', 'c'], make)).n).not.toBe((await cache.get(['a', 'bc'], make)).n)
  })

  it('is made anew where one bit of it is another on the disk', async () => {
    const make = async () => new Uint8Array([1, 2, 3, 4, 5, 6, 7, 8])
    for (const place of [0, 40, -1]) {
      const cache = printCache(folder)
      await cache.get(['page'], make)
      const [file = ''] = await filesIn(folder)
      const data = await readFile(file)
      const at = place < 0 ? data.length + place : place
      data[at] = (data[at] ?? 0) ^ 1
      await writeFile(file, data)
      expect([...(await cache.get(['page'], make))]).toEqual([...(await make())])
    }
  })

  it('goes when nobody has asked for it in a month', async () => {
    const cache = printCache(folder)
    await cache.get(['old'], async () => 1)
    const files = await filesIn(folder)
    const then = new Date(Date.now() - 40 * 86_400_000)
    for (const f of files) await utimes(f, then, then)
    await cache.get(['new'], async () => 2)
    await cache.prune()
    expect(await cache.get(['new'], async () => 3)).toBe(2)
    expect(await cache.get(['old'], async () => 3)).toBe(3)
  })

  it('is what was made all the same where nothing can be kept', async () => {
    const file = path.join(folder, 'file')
    await writeFile(file, 'x')
    const cache = printCache(path.join(file, 'below'))
    expect(await cache.get(['a'], async () => 1)).toBe(1)
    expect(await cache.get(['a'], async () => 2)).toBe(2)
  })
})
