import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { facilityList } from '../../../src/cli/many/facility-list.ts'
import { folders } from '../../support/demo.ts'

let root: string
const list = (...named: string[]) => facilityList(named, root, folders)

async function fair(name: string, text: string): Promise<void> {
  await mkdir(path.join(root, name), { recursive: true })
  await writeFile(path.join(root, name, 'facility.yaml'), text)
}

beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'fairs-'))
  await fair('fairs/north', 'id: zeta\n')
  await fair('fairs/south', 'id: alpha\n')
  await fair('fairs/broken', 'id: [')
  await writeFile(path.join(root, 'fairs', 'README.md'), 'x')
  await mkdir(path.join(root, 'fairs', '.git'))
  await mkdir(path.join(root, 'fairs', 'empty'))
})
afterEach(() => rm(root, { recursive: true }))

describe('a list of facilities', () => {
  it('is in the order of their ids, however it is written, and holds each once', async () => {
    const ids = async (...named: string[]): Promise<string[]> =>
      (await list(...named)).facilities.map((f) => f.id)
    expect(await ids('fairs/north', 'fairs/south')).toEqual(['alpha', 'zeta'])
    expect(await ids('fairs/south', 'fairs/north/', 'fairs/south/facility.yaml')).toEqual([
      'alpha',
      'zeta',
    ])
  })

  it('writes out a star where the shell has not', async () => {
    const { facilities, files, missing } = await list('fairs/*')
    expect(facilities.map((f) => f.shown)).toEqual(['fairs/south', 'fairs/broken', 'fairs/north'])
    expect(files).toEqual(['fairs/README.md'])
    expect(missing).toEqual(['fairs/empty'])
  })

  it('knows a facility by its folder where its file cannot be read', async () => {
    const { facilities } = await list('fairs/broken')
    expect(facilities).toMatchObject([{ id: 'broken', isReadable: false }])
  })

  it('tells of folders that are none, and of an id that two have', async () => {
    expect((await list('nowhere')).missing).toEqual(['nowhere'])
    await fair('more/west', 'id: zeta\n')
    expect((await list('fairs/north', 'fairs/south', 'more/west')).twice).toEqual([
      { id: 'zeta', folders: ['fairs/north', 'more/west'] },
    ])
  })
})
