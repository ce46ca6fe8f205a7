import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadManual } from '../../../src/cli/load/load-manual.ts'
import { date, demoManual, demos, folders } from '../../support/demo.ts'
import { writeMadeUpFairs } from '../../support/made-up-fairs.ts'
import { onesAsMany } from '../../support/one-of-many.ts'
import { siteFiles } from '../../support/site-files.ts'

let root: string
let made: readonly string[]
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'one-of-many-'))
  made = await writeMadeUpFairs(root, 6)
})
afterAll(() => rm(root, { recursive: true }))

describe('what is counted', () => {
  it('is seen as many where it is one', () => {
    const page = {
      path: 'a.html',
      data: '<b>1</b> <i>loads</i> in each; 11 loads; 0.1 days; 1 is',
    }
    expect(onesAsMany([page])).toEqual(['a.html: 1 loads in each; 11 loads; '])
  })

  it.each(demos)('is one of its kind where it is one: %s', async (id) => {
    const { manual, words } = await demoManual(id)
    expect(onesAsMany(await siteFiles(manual, words, folders, new Map()))).toEqual([])
  })

  it('is one of its kind where it is one: facilities made by chance', async () => {
    const found: string[] = []
    for (const folder of made) {
      const { manual, library } = await loadManual(folder, folders, date)
      if (!manual || !library) throw new Error(`no manual of ${folder}`)
      found.push(...onesAsMany(await siteFiles(manual, library.words, folders, new Map())))
    }
    expect(found).toEqual([])
  })
})
