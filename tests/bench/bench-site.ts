import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { projectFolders } from '../../src/cli/folders.ts'
import { loadKept } from '../../src/cli/load/load-kept.ts'
import { siteOnDemand } from '../../src/cli/site-files.ts'
import { generatorIn, writeSources } from './general-site.ts'
import { aimed, median, runCommand, runWhole, type Taken } from './whole-process.ts'

// Site and figures of a facility as nobody has built it before, as a whole process, against a general
// site generator on the same pages' words (aim: not slower); and what an author waits for in the
// preview (aims: a change shown within 150 ms, one page within 60 ms).

const folders = projectFolders()
const date = '2027-06-14'
const rounds = 7
const temporary = await mkdtemp(path.join(os.tmpdir(), 'bench-site-'))
const at = (...parts: readonly string[]): string => path.join(temporary, ...parts)
await cp(path.join(folders.content, 'facilities', 'larkmoor'), at('fair'), { recursive: true })
const file = at('fair', 'facility.yaml')
const text = await readFile(file, 'utf8')

/** Gives the facility a value that it never had. */
async function change(round: number): Promise<void> {
  const changed = text.replace(/speed: 5 mph/, `speed: ${(4 + round / 100).toFixed(2)} mph`)
  if (changed === text) throw new Error('nothing to change in the facility')
  await writeFile(file, changed)
}

const env = { ...process.env, OVALKEEP_BROWSER: at('none') }
const ours = () =>
  runCommand(['build', at('fair'), '--quiet', '--date', date, '--into', at('dist')], {
    env,
    // Without a browser there are no PDFs.
    fine: [3],
  })

await change(0)
ours()
const [id = ''] = await readdir(at('dist'))
const names = await readdir(at('dist', id, 'site'), { recursive: true, encoding: 'utf8' })
const pages = new Map<string, string>()
for (const name of names.filter((n) => n.endsWith('.html') && n !== 'manual.html'))
  pages.set(name, await readFile(at('dist', id, 'site', name), 'utf8'))
const sources = await writeSources(at('general', 'pages'), pages)
const theirs = () =>
  runWhole(
    [generatorIn(folders.project), '--input=general/pages', '--output=general/out', '--quiet'].map(
      (arg) => arg.replace('general/', `${path.relative(process.cwd(), at('general'))}/`),
    ),
    { env: process.env },
  )

theirs()
const pairs: { readonly own: Taken; readonly general: Taken }[] = []
for (let round = 1; round <= rounds; round++) {
  await change(round)
  pairs.push({ own: ours(), general: theirs() })
}
const of = (pick: (pair: (typeof pairs)[number]) => number): string =>
  median(pairs.map(pick)).toFixed(2)
const ratio = median(pairs.map((p) => p.own.wall / p.general.wall))
console.log(
  `\nsite and figures against a general site generator on the words of ${sources.pages} pages (${(sources.bytes / 1e6).toFixed(1)} MB of Markdown), medians of ${rounds} pairs:`,
)
console.log(
  `${'site and figures, a facility never built'.padEnd(48)} ${of((p) => p.own.wall)} s, of node ${of((p) => p.own.cpu)} s CPU, peak ${of((p) => p.own.peak)} MiB`,
)
console.log(
  `${'the general generator'.padEnd(48)} ${of((p) => p.general.wall)} s, of node ${of((p) => p.general.cpu)} s CPU, peak ${of((p) => p.general.peak)} MiB`,
)
console.log(
  aimed(
    'ratio',
    `${ratio.toFixed(2)} of the time, ${of((p) => p.own.cpu / p.general.cpu)} of the CPU`,
    { is: ratio, aim: 1, was: 1.8 },
  ),
)

const shown: { readonly change: number; readonly page: number }[] = []
for (let round = 0; round < 20; round++) {
  await change(100 + round)
  const started = performance.now()
  const { manual, library } = await loadKept(at('fair'), folders, { env, today: date })
  if (!manual || !library) throw new Error('the facility has faults')
  const site = await siteOnDemand(manual, library.words, folders)
  await site.get('procedures/seal.html')?.()
  const made = performance.now()
  await site.get('procedures/harrow.html')?.()
  shown.push({ change: made - started, page: performance.now() - made })
}
const warm = shown.slice(5)
const preview = (name: string, taken: readonly number[], aim: number): void => {
  const is = median(taken)
  console.log(aimed(name, `${is.toFixed(0)} ms`, { is, aim }))
}
preview(
  'preview: a change of the facility on a page',
  warm.map((s) => s.change),
  150,
)
preview(
  'preview: one more page',
  warm.map((s) => s.page),
  60,
)
await rm(temporary, { recursive: true, force: true })
