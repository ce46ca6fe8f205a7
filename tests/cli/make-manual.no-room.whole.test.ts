import { mkdtemp, readFile, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, expect, inject, it } from 'vitest'
import { makeManual } from '../../src/cli/make-manual.ts'
import type { KeptBrowser } from '../../src/print/browser/keep-browser.ts'
import { noRoom } from '../../src/print/page/no-room.ts'
import { folders, testsFolder } from '../support/demo.ts'

let root: string
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'no-room-'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

const failing = (error: Error): KeptBrowser => ({
  warm: () => undefined,
  isThere: () => Promise.resolve(true),
  use: () => Promise.reject(error),
  close: () => Promise.resolve(),
})

const make = (error: Error) =>
  makeManual({
    facility: path.join(testsFolder, 'fixtures', 'small', 'facility'),
    date: '2027-06-14',
    today: '2027-06-14',
    quiet: true,
    needPdfs: false,
    folders: { ...folders, content: inject('smallContent'), dist: path.join(root, 'dist') },
    progress: { stage: (_name, work) => work(() => undefined) },
    browser: failing(error),
    io: {
      out: () => undefined,
      err: () => undefined,
      colors: false,
      terminal: false,
      env: { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache') },
      cwd: root,
      today: '2027-06-14',
    },
  })

it('makes the site where words have no room on a page, and says what to shorten', async () => {
  const made = await make(noRoom('field book, more than a page has room for: page-emergency'))
  if (typeof made === 'number') throw new Error(`nothing was made: ${made}`)
  expect(made.unprinted?.why).toMatch(/page-emergency\nShorten what the facility file says there/)
  const home = await readFile(path.join(root, 'dist', 'small', 'site', 'index.html'), 'utf8')
  expect(home).toContain('</html>')
})

it('hides no fault of the program itself', async () => {
  await expect(make(new Error('an object is not there'))).rejects.toThrow('an object is not there')
})
