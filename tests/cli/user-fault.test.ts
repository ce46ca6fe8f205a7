import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { unwritable, userFault } from '../../src/cli/user-fault.ts'

let root: string
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'fault-'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe('a folder to write into', () => {
  it('is tried without leaving anything behind, also where it is not there yet', async () => {
    await mkdir(path.join(root, 'there'))
    expect(await unwritable(path.join(root, 'there'))).toBeUndefined()
    expect(await unwritable(path.join(root, 'there', 'a', 'b'))).toBeUndefined()
    expect(await readdir(path.join(root, 'there'))).toEqual([])
  })

  it('is refused where a file has its name', async () => {
    await writeFile(path.join(root, 'file'), 'x')
    expect(await unwritable(path.join(root, 'file'))).toContain('a file where a folder was meant')
    expect(await unwritable(path.join(root, 'file', 'below'))).toContain('is a file')
  })

  it('is refused where the system lets nobody write', async () => {
    expect(await unwritable(path.join(root, 'n'.repeat(300), 'x'))).toContain('too long')
    if (process.platform === 'linux') expect(await unwritable('/proc/1')).not.toBeUndefined()
  })
})

describe('a fault of the system', () => {
  it.each([
    ['ENOSPC', 'The disk is full'],
    ['EACCES', 'no permission'],
    ['EROFS', 'can only be read'],
    ['ENAMETOOLONG', 'too long'],
    ['EBUSY', 'open in another program'],
  ])('%s is said in words', (code, words) => {
    const said = userFault(Object.assign(new Error('x'), { code, path: '/fair/dist' }))
    expect(said).toContain(words)
    expect(said).toContain('/fair/dist')
  })

  it('is none where the program itself has failed', () => {
    expect(userFault(new RangeError('no fact'))).toBeUndefined()
    expect(userFault(Object.assign(new Error('x'), { code: 'ERR_ASSERTION' }))).toBeUndefined()
  })
})
