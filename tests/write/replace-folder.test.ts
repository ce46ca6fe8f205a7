import {
  cp,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  readlink,
  rename,
  rm,
  symlink,
  utimes,
  writeFile,
} from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { thisOwner } from '../../src/print/browser/owner.ts'
import { carryOver } from '../../src/write/carry-over.ts'
import { type Disk, disk } from '../../src/write/disk.ts'
import { replaceFolder } from '../../src/write/replace-folder.ts'
import { writeFiles } from '../../src/write/write-files.ts'

let parent: string
const target = (): string => path.join(parent, 'fair')
const content = (): Promise<string> => readFile(path.join(target(), 'page'), 'utf8')
const fillWith = (text: string) => ({
  fill: (staging: string): Promise<void> => writeFile(path.join(staging, 'page'), text),
})

/** Process ids go up to about four million on Linux, so this one does not run. */
const gone = `${thisOwner.replace(/^\d+/, '999999999')}.0`
/** A process on another computer: nobody here can tell whether it runs. */
const elsewhere = '1.00000000.0'

const put = async (name: string, text: string): Promise<string> => {
  const folder = path.join(parent, name)
  await mkdir(folder)
  await writeFile(path.join(folder, 'page'), text)
  return folder
}

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
      replaceFolder(target(), {
        fill: async (staging) => {
          await fillWith('half').fill(staging)
          throw new Error('no space')
        },
      }),
    ).rejects.toThrow('no space')
    expect(await content()).toBe('good')
    expect(await readdir(parent)).toEqual(['fair'])
  })

  it('names a file that cannot be written where it was to be', async () => {
    const full = (staging: string): Error =>
      Object.assign(new Error('ENOSPC'), { code: 'ENOSPC', path: path.join(staging, 'site', 'x') })
    await expect(
      replaceFolder(target(), {
        fill: async (staging) => {
          throw full(staging)
        },
      }),
    ).rejects.toMatchObject({ path: path.join(target(), 'site', 'x') })
  })

  it('follows a link to a folder elsewhere, and leaves it one', async () => {
    const real = await put('elsewhere', 'old')
    await symlink(real, target())
    await replaceFolder(target(), fillWith('new'))
    expect(await readlink(target())).toBe(real)
    expect(await content()).toBe('new')
  })

  it('waits a little for whoever holds a file in the folder', async () => {
    await put('fair', 'old')
    let held = 3
    const busy: Disk = {
      ...disk,
      renameSync: (from, to) => {
        if (held-- > 0) throw Object.assign(new Error('EBUSY'), { code: 'EBUSY' })
        disk.renameSync(from, to)
      },
    }
    await replaceFolder(target(), fillWith('new'), busy)
    expect(await content()).toBe('new')
  })
})

describe('what a killed build has left', () => {
  it('comes back where it was moved aside and not yet replaced, and goes where it is not whole', async () => {
    await put(`.old-fair-${gone}`, 'good')
    await put(`.new-fair-${gone}`, 'half')
    await put(`.gone-other-${elsewhere}`, 'half')
    await replaceFolder(path.join(parent, 'third'), fillWith('x'))
    expect(await content()).toBe('good')
    expect((await readdir(parent)).sort()).toEqual(['fair', 'third'])
  })

  it('goes though this process has the same number', async () => {
    await put('fair', 'good')
    await put(`.new-fair-${thisOwner}.999`, 'half')
    await put(`.old-fair-${thisOwner}.999`, 'older')
    await replaceFolder(target(), fillWith('new'))
    expect(await readdir(parent)).toEqual(['fair'])
  })

  it('stays where a build still runs, or may run on another computer, for a day', async () => {
    await put('fair', 'good')
    const running = [`.new-b-${thisOwner.replace(/^\d+/, '1')}.0`, `.new-c-${elsewhere}`]
    for (const name of running) await put(name, 'half')
    await replaceFolder(target(), fillWith('new'))
    expect((await readdir(parent)).sort()).toEqual([...running, 'fair'])
    await utimes(path.join(parent, running[1] ?? ''), 0, 0)
    await replaceFolder(target(), fillWith('newer'))
    expect((await readdir(parent)).sort()).toEqual([...running.slice(0, 1), 'fair'])
  })
})

describe('two builds at once on one folder', () => {
  it('each put there a whole one, and lose nothing of somebody else', async () => {
    await put('fair', 'old')
    await writeFile(path.join(target(), 'photo.jpg'), 'theirs')
    const build = (name: string, between?: () => Promise<void>): Promise<void> => {
      const made = new Set(['page', `of-${name}`])
      const carried = new Map<string, string>()
      const carry = (from: string, to: string): Promise<void> =>
        carryOver(from, to, { ours: new Set(['page', 'of-one', 'of-two']), made, carried })
      return replaceFolder(target(), {
        fill: async (staging) => {
          await writeFiles(
            staging,
            [...made].map((file) => ({ path: file, data: name })),
          )
          await carry(target(), staging)
          await between?.()
        },
        settle: (old) => carry(old, target()),
      })
    }
    // The second puts its folder there while the first is about to, and somebody adds a file.
    await build('one', async () => {
      await rename(target(), path.join(parent, 'away'))
      await cp(path.join(parent, 'away'), target(), { recursive: true })
      await writeFile(path.join(target(), 'note.txt'), 'late')
    })
    expect((await readdir(target())).sort()).toEqual(['note.txt', 'of-one', 'page', 'photo.jpg'])
    await Promise.all([build('one'), build('two'), build('one'), build('two')])
    const [winner] = (await readdir(target())).filter((n) => n.startsWith('of-'))
    expect(winner).toBe(`of-${await content()}`)
    expect((await readdir(target())).sort()).toEqual(
      ['note.txt', winner, 'page', 'photo.jpg'].sort(),
    )
  })

  it('take turns when the other one is quicker between the two renames', async () => {
    await put('fair', 'old')
    let others = 2
    const crossed: Disk = {
      ...disk,
      renameSync: (from, to) => {
        disk.renameSync(from, to)
        if (String(from) === target() && others-- > 0) {
          disk.renameSync(path.join(parent, `other-${others}`), target())
        }
      },
    }
    await put('other-1', 'first other')
    await put('other-0', 'second other')
    await replaceFolder(target(), fillWith('last'), crossed)
    expect(await content()).toBe('last')
    expect(await readdir(parent)).toEqual(['fair'])
  })
})
