import { mkdtemp, readFile, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import type { Io } from '../../src/cli/io.ts'
import { makeManual } from '../../src/cli/make-manual.ts'
import type { Progress } from '../../src/cli/progress.ts'
import { type BrowserFound, findBrowser } from '../../src/print/browser/find-browser.ts'
import { keepBrowser } from '../../src/print/browser/keep-browser.ts'
import { folders, testsFolder } from '../support/demo.ts'
import { ownCache } from '../support/own-cache.ts'

let root: string
let own: Io['env']

/** Makes the small manual; the browser is killed in the middle of its first prints. */
async function make(date: string, deaths: number) {
  const started: BrowserFound[] = []
  const browser = keepBrowser(async () => {
    const found = await findBrowser(own)
    if (found.kind === 'found') started.push(found)
    return found
  })
  const killSoon = (): void => {
    const group = started.at(-1)?.browser.process()?.pid
    if (group !== undefined) setTimeout(() => process.kill(-group, 'SIGKILL'), 400)
  }
  const progress: Progress = {
    stage: (name, work) => {
      if (name === 'print' && started.length <= deaths) killSoon()
      return work(() => undefined)
    },
  }
  const io: Io = {
    out: () => undefined,
    err: () => undefined,
    colors: false,
    terminal: false,
    env: own,
    cwd: root,
    today: date,
  }
  const made = await makeManual({
    facility: path.join(testsFolder, 'fixtures', 'small', 'facility'),
    date,
    today: date,
    quiet: true,
    needPdfs: false,
    folders: { ...folders, content: inject('smallContent'), dist: path.join(root, 'dist') },
    progress,
    browser,
    io,
  })
  await browser.close()
  if (typeof made === 'number') throw new Error(`nothing was made: ${made}`)
  return { ...made, started: started.length }
}

const binder = (): Promise<Buffer> => readFile(path.join(root, 'dist', 'small', 'binder.pdf'))

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'dying-'))
  own = await ownCache(path.join(root, 'cache'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

// Signals to groups of processes are those of Linux and macOS.
describe.runIf(process.platform !== 'win32')(
  'a browser that is killed in the middle of printing a manual',
  () => {
    it('once, is replaced; twice, leaves the prints of the last build, marked as old', async () => {
      const first = await make('2027-06-14', 1)
      expect([first.started, first.unprinted]).toEqual([2, undefined])
      const printed = await binder()
      const second = await make('2027-06-15', 2)
      expect(second.started).toBe(2)
      expect(second.unprinted?.why).toMatch(/ended or did not answer any more .* 2 times/)
      expect(second.unprinted?.stays).toMatch(/PDFs of an earlier build stay.*2027-06-14/)
      expect((await binder()).equals(printed)).toBe(true)
      const home = path.join(root, 'dist', 'small', 'site', 'index.html')
      expect(await readFile(home, 'utf8')).toContain('OLD: revision')
    })
  },
)
