import { chmod, mkdtemp, rm, stat, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { cacheFolder, cachePlaces, isPrivate } from '../../../src/print/browser/cache-folder.ts'
import { thisMachine } from '../../../src/print/browser/machine.ts'
import { machines } from '../../support/machines.ts'

describe('places for the cache', () => {
  it('are the user’s own cache on each kind of computer, then the temporary folder', () => {
    expect(cachePlaces(machines.linux)).toEqual(['/home/pat/.cache/ovalkeep', '/tmp/ovalkeep-1000'])
    expect(cachePlaces(machines.mac)).toEqual([
      '/Users/pat/Library/Caches/ovalkeep',
      '/var/folders/x1/T/ovalkeep-501',
    ])
    expect(cachePlaces(machines.windows)).toEqual([
      'C:\\Users\\Pat\\AppData\\Local\\ovalkeep',
      'C:\\Users\\Pat\\AppData\\Local\\Temp\\ovalkeep',
    ])
  })

  it('need no more than a home on Windows', () => {
    const [first] = cachePlaces({ ...machines.windows, env: {} })
    expect(first).toBe('C:\\Users\\Pat\\AppData\\Local\\ovalkeep')
  })

  it('begin with the one that is set', () => {
    for (const machine of Object.values(machines)) {
      const env = { ...machine.env, XDG_CACHE_HOME: '/kept' }
      expect(cachePlaces({ ...machine, env })[0]?.replaceAll('\\', '/')).toBe('/kept/ovalkeep')
    }
  })
})

describe('a folder to run programs from', () => {
  it('belongs to the user, and nobody else may write to it', () => {
    expect(isPrivate({ uid: 1000, mode: 0o40700 }, machines.linux)).toBe(true)
    expect(isPrivate({ uid: 1000, mode: 0o40755 }, machines.linux)).toBe(true)
    expect(isPrivate({ uid: 1001, mode: 0o40700 }, machines.linux)).toBe(false)
    expect(isPrivate({ uid: 1000, mode: 0o40770 }, machines.linux)).toBe(false)
    expect(isPrivate({ uid: 1000, mode: 0o41777 }, machines.linux)).toBe(false)
  })

  it('is taken on Windows, which gives every folder user 0 and all rights', () => {
    expect(isPrivate({ uid: 0, mode: 0o40666 }, machines.windows)).toBe(true)
  })
})

describe('the cache folder', () => {
  let home: string
  beforeEach(async () => {
    home = await mkdtemp(path.join(os.tmpdir(), 'home-'))
  })
  afterEach(() => rm(home, { recursive: true, force: true }))

  const machine = (user: number | undefined) => ({
    ...thisMachine({}),
    home: path.join(home, 'own'),
    temporary: path.join(home, 'temporary'),
    user,
  })

  it('is made where it is missing', async () => {
    const folder = await cacheFolder(machine(process.getuid?.()))
    expect(folder.startsWith(path.join(home, 'own'))).toBe(true)
    expect((await stat(folder)).isDirectory()).toBe(true)
  })

  it('is found where users have no number', async () => {
    expect(await cacheFolder(machine(undefined))).toContain(path.join(home, 'own'))
  })

  it('is the temporary one where the home cannot be written', async () => {
    await writeFile(path.join(home, 'own'), 'a file where the home should be')
    const folder = await cacheFolder(machine(process.getuid?.()))
    expect(folder.startsWith(path.join(home, 'temporary'))).toBe(true)
  })

  it('is refused by name where others may write to every place', async () => {
    const own = machine(process.getuid?.())
    const places = cachePlaces(own)
    for (const place of places) {
      await cacheFolder({ ...own, env: { XDG_CACHE_HOME: path.dirname(place) } })
      await rm(place, { recursive: true, force: true })
      await writeFile(place, 'in the way')
    }
    await expect(cacheFolder(own)).rejects.toThrow(
      `${places[0]} and ${places[1]} cannot be written`,
    )
  })

  it('is refused where its mode lets others write', async () => {
    const own = machine(process.getuid?.())
    const first = await cacheFolder(own)
    await chmod(first, 0o777)
    const second = await cacheFolder(own)
    // Windows keeps no such mode.
    if (process.platform !== 'win32') expect(second).not.toBe(first)
  })
})
