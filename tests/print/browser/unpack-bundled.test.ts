import { existsSync } from 'node:fs'
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { makeOnce } from '../../../src/print/browser/unpack-bundled.ts'

let cache: string
beforeEach(async () => {
  cache = await mkdtemp(path.join(os.tmpdir(), 'cache-'))
})
afterEach(() => rm(cache, { recursive: true, force: true }))

const isThere = (folder: string): boolean => existsSync(path.join(folder, 'program'))

const fill =
  (text: string) =>
  (own: string): Promise<void> =>
    writeFile(path.join(own, 'program'), text)

describe('a folder that is made once', () => {
  it('is filled when it is first wanted, and not again', async () => {
    const folder = path.join(cache, 'chromium-1')
    expect(await makeOnce(folder, isThere, fill('first'))).toBe(folder)
    await makeOnce(folder, isThere, fill('second'))
    expect(await readFile(path.join(folder, 'program'), 'utf8')).toBe('first')
    expect(await readdir(cache)).toEqual(['chromium-1'])
  })

  it('is whole when two make it at once, and nothing is left beside it', async () => {
    const folder = path.join(cache, 'chromium-1')
    await Promise.all(['a', 'b', 'c'].map((text) => makeOnce(folder, isThere, fill(text))))
    expect(await readFile(path.join(folder, 'program'), 'utf8')).toMatch(/^[abc]$/)
    expect(await readdir(cache)).toEqual(['chromium-1'])
  })

  it('leaves nothing behind when it cannot be filled', async () => {
    const folder = path.join(cache, 'chromium-1')
    const failing = (): Promise<void> => Promise.reject(new Error('the disk is full'))
    await expect(makeOnce(folder, isThere, failing)).rejects.toThrow('the disk is full')
    expect(await readdir(cache)).toEqual([])
  })
})
