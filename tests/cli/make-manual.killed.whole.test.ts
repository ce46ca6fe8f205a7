import { mkdtemp, readdir, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import {
  bundledBuild,
  type Kill,
  putPhoto,
  runBuild,
  stateOf,
  wholeManual,
} from '../support/kill-builds.ts'

/** How many builds are killed; `OVALKEEP_KILLS=200 npx vitest run tests/cli/make-manual.killed` for all. */
const kills = Number(process.env['OVALKEEP_KILLS'] ?? 10)

let root: string
let bundle: Awaited<ReturnType<typeof bundledBuild>>
const dist = (): string => path.join(root, 'dist')
const id = 'small'

const dates = ['2027-06-14', '2027-06-15'] as const

const run = (date: string, kill?: Kill) =>
  runBuild(
    {
      file: bundle.file,
      content: inject('smallContent'),
      dist: dist(),
      date,
      env: {
        ...process.env,
        OVALKEEP_BROWSER: path.join(root, 'none'),
        XDG_CACHE_HOME: path.join(root, 'cache'),
      },
    },
    kill,
  )

/** Milliseconds from the start of a stage, and operations of the write, spread over all there are. */
function plan(operations: number): readonly Kill[] {
  const stages = ['start', 'compute', 'render', 'write']
  return Array.from({ length: kills }, (_, i): Kill => {
    const share = (i + 0.5) / kills
    if (i % 2 === 0)
      return { stage: stages[(i / 2) % stages.length] ?? '', after: Math.round(share * 600) }
    // The last operations are the two renames and what is deleted after them.
    const at = i % 4 === 1 ? Math.ceil(share * operations) : operations - Math.floor((i / 4) % 16)
    return { at, when: i % 8 < 4 ? 'before' : 'after' }
  })
}

beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'killed-'))
  bundle = await bundledBuild()
})
afterAll(async () => {
  await bundle.remove()
  await rm(root, { recursive: true, force: true })
})

describe(`builds that are killed, ${kills} times`, () => {
  it(
    'always leave a whole manual, the old or the new one, and the next build clears up',
    async () => {
      const { said } = await run(dates[0])
      const operations = Number(/operations (\d+)/.exec(said)?.[1])
      expect(operations).toBeGreaterThan(100)
      await putPhoto(path.join(dist(), id))
      let [before, killed, old, aside] = [dates[0] as string, 0, 0, 0]
      for (const [i, kill] of plan(operations).entries()) {
        const after = before === dates[0] ? dates[1] : dates[0]
        const { wasKilled } = await run(after, kill)
        const state = await stateOf(dist(), id)
        expect([before, after], `after kill ${JSON.stringify(kill)}`).toContain(state.date)
        killed += Number(wasKilled)
        old += Number(state.date === before)
        aside += Number(state.isAside)
        before = state.date
        if (i % 10 !== 4 && !state.isAside) continue
        const next = before === dates[0] ? dates[1] : dates[0]
        await run(next)
        expect(await readdir(dist())).toEqual([id])
        expect(await wholeManual(path.join(dist(), id))).toBe(next)
        before = next
      }
      console.log(
        `${killed} builds killed of ${kills}: ${old} left the old manual, ${kills - old} the new one, ${aside} of the old ones between the two renames`,
      )
      expect(killed).toBeGreaterThan(kills / 2)
      await run(dates[0])
      expect(await readdir(dist())).toEqual([id])
    },
    Math.max(300_000, kills * 30_000),
  )

  it('of which two run at once on one folder each leave a whole manual, the last of them', async () => {
    const ended = await Promise.all(dates.map(async (date) => ({ date, ...(await run(date)) })))
    expect(ended.map((e) => /operations/.test(e.said))).toEqual([true, true])
    expect(dates).toContain(await wholeManual(path.join(dist(), id)))
    expect(await readdir(dist())).toEqual([id])
  })
})
