import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import { openHand } from '../../../src/cli/many/hands.ts'
import type { ManyBuild } from '../../../src/cli/many/make-one.ts'
import { keepBrowser } from '../../../src/print/browser/keep-browser.ts'
import { noBrowser } from '../../../src/print/browser/no-browser.ts'
import { date, folders } from '../../support/demo.ts'
import { madeUpFair } from '../../support/made-up-fairs.ts'

let root: string
const why = 'nothing can be printed here'

const job = (env: NodeJS.ProcessEnv = {}): ManyBuild => ({
  date,
  quiet: true,
  needPdfs: false,
  folders: { ...folders, content: inject('smallContent'), dist: path.join(root, 'out') },
  browser: keepBrowser(async () => noBrowser([])),
  io: {
    out: () => undefined,
    err: () => undefined,
    colors: false,
    terminal: false,
    env: { ...process.env, XDG_CACHE_HOME: path.join(root, 'cache'), ...env },
    cwd: root,
    today: date,
  },
})

async function fair(seed: number, change = (text: string): string => text) {
  const { id, text } = madeUpFair(seed)
  const folder = path.join(root, id)
  await mkdir(folder, { recursive: true })
  await writeFile(path.join(folder, 'facility.yaml'), change(text))
  return { folder, shown: id, id, isReadable: true }
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'hands-'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

describe('a process that makes facilities for another', () => {
  it('makes one after the other, tells what came of each, and why nothing is printed', async () => {
    const hand = openHand(job(), why)
    try {
      const made = await hand.make(await fair(1))
      expect(made.outcome).toMatchObject({ id: madeUpFair(1).id, code: 3 })
      expect(made.outcome.built?.counts.pages).toBeGreaterThan(20)
      expect(made.unprinted).toBe(why)
      const folder = path.join(root, 'out', madeUpFair(1).id)
      expect(await readFile(path.join(folder, 'site', 'index.html'), 'utf8')).toContain('<h1')
      const bad = await hand.make(
        await fair(2, (text) => text.replace(/^cushion: .*$/m, 'cushion: { material: butter }')),
      )
      expect(bad.outcome).toMatchObject({ code: 1, built: undefined })
      expect(bad.said.join('\n')).toMatch(/facility\.yaml:\d+:\d+: error/)
    } finally {
      hand.end()
    }
  })

  it('that ends in the middle is told, with the facility on which it did, and replaced', async () => {
    // Less memory than a manual takes: the process ends by itself.
    const hand = openHand(job({ NODE_OPTIONS: '--max-old-space-size=24' }), why)
    try {
      for (const seed of [3, 4]) {
        const { outcome, said } = await hand.make(await fair(seed))
        expect(outcome).toMatchObject({ id: madeUpFair(seed).id, code: 70, built: undefined })
        expect(said.join('\n')).toMatch(/^The process that made it has ended \(/)
      }
    } finally {
      hand.end()
    }
  })
})
