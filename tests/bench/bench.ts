import { spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import path from 'node:path'
import { Bench } from 'tinybench'
import { build } from '../../src/cli/build.ts'
import { projectFolders } from '../../src/cli/folders.ts'
import { processIo } from '../../src/cli/io.ts'
import { loadManual } from '../../src/cli/load/load-manual.ts'
import { siteFiles, siteOnDemand } from '../../src/cli/site-files.ts'
import { libraryWords } from '../support/worksheet-words.ts'

// How long everything takes on this machine. Aims: site and figures as a whole process under 2 s,
// everything with PDFs under 15 s, a rebuild in the preview under 300 ms, all figures of a facility
// in a warm process under 150 ms.

const folders = projectFolders()
const facility = path.join(folders.content, 'facilities', 'larkmoor')
const date = '2027-06-14'
const into = path.join(folders.project, 'node_modules', '.cache', 'bench')
const start = path.join(folders.project, 'src', 'cli', 'start.mjs')

const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`

function wholeProcess(name: string, env: NodeJS.ProcessEnv): void {
  const args = [start, 'build', facility, '--quiet', '--date', date, '--into', into]
  spawnSync(process.execPath, args, { env })
  const started = performance.now()
  spawnSync(process.execPath, args, { env })
  console.log(`${name.padEnd(48)} ${seconds(performance.now() - started)}`)
}

wholeProcess('site and figures, whole process', {
  ...process.env,
  OVALKEEP_BROWSER: path.join(into, 'none'),
})
wholeProcess('everything with PDFs, whole process', process.env)

const bench = new Bench({ time: 2000, warmupTime: 1000 })
bench.add('read, check, compute, compose (warm)', async () => {
  await loadManual(facility, folders, date)
})
bench.add('the same and one page (warm): a preview rebuild', async () => {
  const { manual, library } = await loadManual(facility, folders, date)
  if (manual && library)
    (await siteOnDemand(manual, library.words, folders)).get('procedures/seal.html')?.()
})
bench.add('the same and the whole site (warm)', async () => {
  const { manual, library } = await loadManual(facility, folders, date)
  if (manual && library) await siteFiles(manual, library.words, folders, new Map())
})
await bench.run()
for (const t of bench.tasks)
  console.log(
    `${t.name.padEnd(48)} ${t.result && 'latency' in t.result ? t.result.latency.mean.toFixed(0) : '?'} ms`,
  )

// What the numbers cost, by section, in a warm process: every figure once, then tables, ranking,
// findings and plans on top of them.
const { facility: checked, library } = await loadManual(facility, folders, date)
if (checked && library) {
  const { computeFacility } = await import('../../src/compute/compute-facility.ts')
  const { composeReckoner } = await import('../../src/compose/reckoners/reckoner.ts')
  const { rankUnmeasured } = await import('../../src/compute/sensitivity.ts')
  const { composeManual } = await import('../../src/compose/compose-manual.ts')
  const everyFigure = (c: ReturnType<typeof computeFacility>): void =>
    c.engine.uses.forEach((u) => c.engine.worksheet(u.id))
  const sections: readonly [string, () => void][] = [
    ['facts and figures', () => everyFigure(computeFacility(checked, libraryWords))],
    [
      'figures and ready reckoners',
      () => {
        const c = computeFacility(checked, libraryWords)
        everyFigure(c)
        library.reckoners.forEach((r) => composeReckoner(r.value, c.engine, c.locale))
      },
    ],
    [
      'figures and ranking of what nobody measured',
      () => {
        const c = computeFacility(checked, libraryWords)
        everyFigure(c)
        rankUnmeasured(c.engine)
      },
    ],
    [
      'all of it, with findings and plans',
      () =>
        void composeManual({
          facility: checked,
          computed: computeFacility(checked, libraryWords),
          library,
          sources: [],
          date,
        }),
    ],
  ]
  const numbers = new Bench({ time: 1500, warmupTime: 500 })
  for (const [name, work] of sections) numbers.add(name, work)
  await numbers.run()
  console.log('\nthe numbers alone (aim: all under 150 ms):')
  for (const t of numbers.tasks)
    console.log(
      `${t.name.padEnd(48)} ${t.result && 'latency' in t.result ? t.result.latency.mean.toFixed(0) : '?'} ms`,
    )
}

console.log('\nby stage, one build:')
await build(facility, { date, into }, processIo())
rmSync(into, { recursive: true, force: true })
