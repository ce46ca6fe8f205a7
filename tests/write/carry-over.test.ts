import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { carryOver, type Replaced } from '../../src/write/carry-over.ts'

let root: string
const from = (name = ''): string => path.join(root, 'from', name)
const to = (name = ''): string => path.join(root, 'to', name)

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'carry-'))
  await mkdir(from('site'), { recursive: true })
  await mkdir(to())
})
afterEach(() => rm(root, { recursive: true }))

const names = (ours: readonly string[], made: readonly string[]): Replaced => ({
  ours: new Set(ours),
  made: new Set(made),
  carried: new Map(),
})

describe('carryOver', () => {
  it('takes along what somebody else has put there, and leaves behind what was ours', async () => {
    await writeFile(from('binder.pdf'), 'ours')
    await writeFile(from('site/photo.jpg'), 'theirs')
    await writeFile(from('.htaccess'), 'theirs')
    await symlink('photo.jpg', from('site/link.jpg'))
    const known = names(['binder.pdf'], [])
    await carryOver(from(), to(), known)
    expect([...known.carried.keys()]).toEqual(['.htaccess', 'site/link.jpg', 'site/photo.jpg'])
    expect(await readFile(to('site/link.jpg'), 'utf8')).toBe('theirs')
    expect((await readdir(to())).sort()).toEqual(['.htaccess', 'site'])
  })

  it('puts a file of somebody else beside a new one of the same name, unless both are the same', async () => {
    await writeFile(from('binder.pdf'), 'theirs')
    await writeFile(from('cards.pdf'), 'the same')
    await writeFile(to('binder.pdf'), 'new')
    await writeFile(to('cards.pdf'), 'the same')
    const known = names([], ['binder.pdf', 'cards.pdf'])
    await carryOver(from(), to(), known)
    expect([...known.carried]).toEqual([['binder.pdf', 'binder.kept.pdf']])
    expect(await readFile(to('binder.pdf'), 'utf8')).toBe('new')
    expect(await readFile(to('binder.kept.pdf'), 'utf8')).toBe('theirs')
  })

  it('never writes one file of somebody else over another', async () => {
    for (const name of ['binder.pdf', 'binder.kept.pdf', 'binder.kept-2.pdf'])
      await writeFile(from(name), name)
    await writeFile(to('binder.pdf'), 'new')
    await carryOver(from(), to(), names([], ['binder.pdf']))
    expect(await readFile(to('binder.kept-3.pdf'), 'utf8')).toBe('binder.pdf')
    expect(await readFile(to('binder.kept.pdf'), 'utf8')).toBe('binder.kept.pdf')
  })

  it('a second time brings what has come or changed since, and nothing twice', async () => {
    await writeFile(from('binder.pdf'), 'theirs')
    await writeFile(from('note'), 'first')
    await symlink('note', from('link'))
    await writeFile(to('binder.pdf'), 'new')
    const known = names([], ['binder.pdf'])
    await carryOver(from(), to(), known)
    await writeFile(from('note'), 'second')
    await writeFile(from('late'), 'late')
    await carryOver(from(), to(), known)
    expect((await readdir(to())).sort()).toEqual(
      ['binder.kept.pdf', 'binder.pdf', 'late', 'link', 'note'].sort(),
    )
    expect(await readFile(to('note'), 'utf8')).toBe('second')
  })

  it('finds nothing where there is no folder yet', async () => {
    const known = names([], [])
    await carryOver(path.join(root, 'none'), to(), known)
    expect(known.carried.size).toBe(0)
  })
})
