import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { recoverFolder, replaceFolder } from '../../src/write/replace-folder.ts'

let parent: string
const target = (): string => path.join(parent, 'fair')
const content = (): Promise<string> => readFile(path.join(target(), 'page'), 'utf8')
const fillWith =
  (text: string) =>
  (staging: string): Promise<void> =>
    writeFile(path.join(staging, 'page'), text)

beforeEach(async () => {
  parent = await mkdtemp(path.join(os.tmpdir(), 'replace-'))
})
afterEach(() => rm(parent, { recursive: true }))

describe('replaceFolder', () => {
  it('replaces the whole folder and leaves nothing else behind', async () => {
    await replaceFolder(target(), fillWith('old'))
    await writeFile(path.join(target(), 'stray'), 'x')
    await replaceFolder(target(), fillWith('new'))
    expect(await content()).toBe('new')
    expect(await readdir(target())).toEqual(['page'])
    expect(await readdir(parent)).toEqual(['fair'])
  })

  it('keeps the last good folder when filling fails', async () => {
    await replaceFolder(target(), fillWith('good'))
    await expect(
      replaceFolder(target(), async (staging) => {
        await fillWith('half')(staging)
        throw new Error('no space')
      }),
    ).rejects.toThrow('no space')
    expect(await content()).toBe('good')
    expect(await readdir(parent)).toEqual(['fair'])
  })

  it('brings back what a killed process had moved aside', async () => {
    // Process ids go up to about four million on Linux, so this one does not run.
    const gone = 999_999_999
    await mkdir(path.join(parent, `.old-fair-${gone}`))
    await writeFile(path.join(parent, `.old-fair-${gone}`, 'page'), 'good')
    await mkdir(path.join(parent, `.new-fair-${gone}`))
    await recoverFolder(parent)
    expect(await content()).toBe('good')
    expect(await readdir(parent)).toEqual(['fair'])
  })
})
