import { rmSync } from 'node:fs'
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { Bench } from 'tinybench'
import { build } from '../../src/cli/build.ts'
import { projectFolders } from '../../src/cli/folders.ts'
import { processIo } from '../../src/cli/io.ts'
import { loadManual } from '../../src/cli/load/load-manual.ts'
import { siteOnDemand } from '../../src/cli/site-files.ts'
import { cacheFolder } from '../../src/print/browser/cache-folder.ts'
import { thisMachine } from '../../src/print/browser/machine.ts'
import { siteFiles } from '../support/site-files.ts'
import { libraryWords } from '../support/worksheet-words.ts'
import { type Aimed, aimed, runCommand, type Taken, takenText } from './whole-process.ts'

// How long everything takes on this machine. Aims stand beside the lines, with what it was before work
// on them began, on two cores that do nothing else; all figures of a facility in a warm process take
// under 150 ms.

const folders = projectFolders()
const facility = path.join(folders.content, 'facilities', 'larkmoor')
const date = '2027-06-14'
const into = path.join(folders.project, 'node_modules', '.cache', 'bench')

/** Runs a command as a process of its own and prints how long it took and what it used. */
function wholeProcess(
  name: string,
  args: readonly [string, ...string[]],
  env: NodeJS.ProcessEnv,
  goal?: Omit<Aimed, 'is'>,
): Taken {
  const taken = runCommand(args, { env, fine: [0, 3] })
  console.log(takenText(name, taken, goal))
  return taken
}

/** A facility with a procedure of its own, to be edited. */
async function ownFair(folder: string): Promise<string> {
  const fair = path.join(folder, 'fair')
  await cp(facility, fair, { recursive: true })
  await mkdir(path.join(fair, 'procedures'), { recursive: true })
  const text = await readFile(path.join(folders.content, 'procedures', 'deep.yaml'), 'utf8')
  await writeFile(
    path.join(fair, 'procedures', 'own.yaml'),
    text.replace(/^id: deep$/m, 'id: own').replace(/^title: .*$/m, 'title: Our own way'),
  )
  return fair
}

async function edit(file: string, from: RegExp, to: string): Promise<void> {
  const text = await readFile(file, 'utf8')
  if (!from.test(text)) throw new Error(`nothing to edit in ${file}`)
  await writeFile(file, text.replace(from, to))
}

// Whole processes: first those that make no PDFs, then a manual with everything: cold, with nothing
// changed, after an edit of a procedure and of a value of the facility. Memory is that of node, the
// browser apart.
const temporary = await mkdtemp(path.join(os.tmpdir(), 'bench-build-'))
const fair = await ownFair(temporary)
const without = { ...process.env, OVALKEEP_BROWSER: path.join(into, 'none') }
const make = (of: string): [string, ...string[]] => [
  'build',
  of,
  '--quiet',
  '--date',
  date,
  '--into',
  into,
]
// The first run bundles the program.
wholeProcess('(the program bundled first)', ['check', facility], without)
wholeProcess('check', ['check', facility], without, { aim: 0.5, was: 0.8 })
wholeProcess('explain one figure', ['explain', facility, 'seal'], without, { aim: 0.5, was: 1.8 })
wholeProcess('site and figures', make(facility), without)
const cache = await cacheFolder(thisMachine(process.env))
const kept = { ...process.env, XDG_CACHE_HOME: path.join(temporary, 'cache') }
// The browser is there already; prints and all else are not.
await cp(cache, path.join(temporary, 'cache', 'ovalkeep'), {
  recursive: true,
  filter: (file) => !['prints', 'kept'].some((made) => file.startsWith(path.join(cache, made))),
})
const { peak } = wholeProcess('everything with PDFs, cold', make(fair), kept)
console.log(aimed('its memory', `${peak.toFixed(0)} MiB`, { is: peak, aim: 400 }))
wholeProcess('nothing changed', make(fair), kept, { aim: 1, was: 5.6 })
await edit(path.join(fair, 'procedures', 'own.yaml'), /^purpose: /m, '$&Slowly. ')
wholeProcess('one procedure edited', make(fair), kept, { aim: 3, was: 11.4 })
await edit(path.join(fair, 'facility.yaml'), /speed: 5 mph/, 'speed: 4 mph')
wholeProcess('a value of the facility edited', make(fair), kept, { aim: 6, was: 19.3 })
await rm(temporary, { recursive: true, force: true })

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
await build([facility], { date, into }, processIo())
rmSync(into, { recursive: true, force: true })
