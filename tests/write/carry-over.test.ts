import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { carryOver } from '../../src/write/carry-over.ts'

let root: string
const from = (name = ''): string => path.join(root, 'from', name)
const to = (name = ''): string => path.join(root, 'to', name)

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'carry-'))
  await mkdir(from('site'), { recursive: true })
  await mkdir(to())
})
afterEach(() => rm(root, { recursive: true }))

describe('carryOver', () => {
  it('takes along what somebody else has put there, and leaves behind what was ours', async () => {
    await writeFile(from('binder.pdf'), 'ours')
    await writeFile(from('site/photo.jpg'), 'theirs')
    await writeFile(from('.htaccess'), 'theirs')
    await symlink('photo.jpg', from('site/link.jpg'))
    const carried = await carryOver(from(), to(), {
      ours: new Set(['binder.pdf']),
      made: new Set(),
    })
    expect(carried).toEqual(['.htaccess', 'site/link.jpg', 'site/photo.jpg'])
    expect(await readFile(to('site/link.jpg'), 'utf8')).toBe('theirs')
    expect((await readdir(to())).sort()).toEqual(['.htaccess', 'site'])
  })

  it('puts a file of somebody else beside a new one of the same name, unless both are the same', async () => {
    await writeFile(from('binder.pdf'), 'theirs')
    await writeFile(from('cards.pdf'), 'the same')
    await writeFile(to('binder.pdf'), 'new')
    await writeFile(to('cards.pdf'), 'the same')
    const made = new Set(['binder.pdf', 'cards.pdf'])
    expect(await carryOver(from(), to(), { ours: new Set(), made })).toEqual(['binder.kept.pdf'])
    expect(await readFile(to('binder.pdf'), 'utf8')).toBe('new')
    expect(await readFile(to('binder.kept.pdf'), 'utf8')).toBe('theirs')
  })

  it('finds nothing where there is no folder yet', async () => {
    const none = { ours: new Set<string>(), made: new Set<string>() }
    expect(await carryOver(path.join(root, 'none'), to(), none)).toEqual([])
  })
})
