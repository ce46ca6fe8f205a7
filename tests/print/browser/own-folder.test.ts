import { existsSync } from 'node:fs'
import { mkdir, mkdtemp, readdir, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { ownFolder } from '../../../src/print/browser/own-folder.ts'
import { runsStill, thisOwner } from '../../../src/print/browser/owner.ts'

let parent: string
beforeEach(async () => {
  parent = await mkdtemp(path.join(os.tmpdir(), 'own-'))
})
afterEach(() => rm(parent, { recursive: true }))

it('a folder of its own is made, and those of the same kind go whose process has ended', async () => {
  const gone = thisOwner.replace(/^\d+/, '999999999')
  const names = [`unpack-${gone}-aaaaaa`, `other-${gone}-aaaaaa`, 'unpack-5.00000000-aaaaaa']
  for (const name of names) await mkdir(path.join(parent, name, 'below'), { recursive: true })
  const first = await ownFolder(parent, 'unpack')
  const second = await ownFolder(parent, 'unpack')
  expect(existsSync(first)).toBe(true)
  expect((await readdir(parent)).sort()).toEqual(
    [...names.slice(1), path.basename(first), path.basename(second)].sort(),
  )
})

it('whether a process runs is known of this computer alone', () => {
  expect(runsStill(thisOwner)).toBe(true)
  expect(runsStill(thisOwner.replace(/^\d+/, '999999999'))).toBe(false)
  expect(runsStill('1.00000000')).toBeUndefined()
})
