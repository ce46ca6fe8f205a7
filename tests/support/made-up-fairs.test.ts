import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadFacility } from '../../src/cli/load/load-facility.ts'
import { date } from './demo.ts'
import { madeUpFair, writeMadeUpFairs } from './made-up-fairs.ts'

let root: string
let made: readonly string[]
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'made-up-'))
  made = await writeMadeUpFairs(root, 100)
})
afterAll(() => rm(root, { recursive: true }))

describe('made-up facilities', () => {
  it('are sound, all hundred', async () => {
    expect(made).toHaveLength(100)
    for (const folder of made) {
      const { problems } = await loadFacility(
        { root: folder, shown: path.basename(folder) },
        { today: date, wanted: undefined },
      )
      expect(problems.map((p) => `${p.place.file}:${p.place.line} ${p.message}`)).toEqual([])
    }
  })

  it('are the same for the same seed, and differ from their neighbours', () => {
    expect(madeUpFair(7)).toEqual(madeUpFair(7))
    const texts = new Set(Array.from({ length: 100 }, (_, i) => madeUpFair(i + 1).text))
    expect(texts.size).toBe(100)
  })
})
