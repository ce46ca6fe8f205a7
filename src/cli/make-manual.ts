import { readFile } from 'node:fs/promises'
import path from 'node:path'
import * as z from 'zod'
import { composeFiguresFile } from '../compose/figures-file.ts'
import type { Manual } from '../model/manual.ts'
import type { OutputFile } from '../model/output-file.ts'
import { hasErrors, type Problem } from '../model/problem.ts'
import { cacheFolder } from '../print/browser/cache-folder.ts'
import { type BrowserFound, findBrowser } from '../print/browser/find-browser.ts'
import { thisMachine } from '../print/browser/machine.ts'
import type { NoBrowser } from '../print/browser/no-browser.ts'
import { printCache } from '../print/press/print-cache.ts'
import { calendarFolder } from '../render/calendars/calendar-file.ts'
import { workerFile } from '../render/site/kept-site.ts'
import { oneFileName } from '../render/site/papers.ts'
import { isKept } from '../render/site/site-files.ts'
import { tablesFolder } from '../render/tables/tables.ts'
import { buildRecord, hashOf, sha256 } from '../write/build-record.ts'
import { carryOver } from '../write/carry-over.ts'
import { replaceFolder } from '../write/replace-folder.ts'
import { thirdPartyNotices } from '../write/third-party-notices.ts'
import { writeFiles } from '../write/write-files.ts'
import { type Built, countsOf, keptText, withoutPdfs } from './build-summary.ts'
import { terminalNames } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { type Kept, keptPrints } from './kept-prints.ts'
import { lastBinder } from './last-binder.ts'
import { loadFonts } from './load/load-fonts.ts'
import { loadKept } from './load/load-kept.ts'
import type { Folders, LoadedManual } from './load/load-manual.ts'
import { loadWorker } from './load/load-scripts.ts'
import type { Printed } from './print-manual.ts'
import { problemsText } from './problem-text.ts'
import type { Progress } from './progress.ts'
import { siteWith } from './site-with.ts'

type Ready = LoadedManual & {
  readonly manual: Manual
  readonly library: NonNullable<LoadedManual['library']>
}

const isReady = (loaded: LoadedManual): loaded is Ready =>
  loaded.manual !== undefined && loaded.library !== undefined && !hasErrors(loaded.problems)

/** What is asked for, and with what it is made. */
export type ManualJob = {
  readonly facility: string
  /** The date of the manual, where somebody asks for one. */
  readonly date: string | undefined
  readonly today: string
  readonly quiet: boolean
  /** Write nothing where PDFs cannot be made. */
  readonly needPdfs: boolean
  readonly folders: Folders
  readonly progress: Progress
  readonly io: Io
}

/** A manual that was written. */
export type MadeManual = {
  readonly target: string
  readonly problems: readonly Problem[]
  /** The browser that printed, as it was found; nothing where none did, with why. */
  readonly browser: string | undefined
  readonly why: string
  readonly built: Omit<Built, 'folder' | 'seconds'>
}

async function load({
  facility,
  date,
  today,
  folders,
  progress,
  io,
}: ManualJob): Promise<Ready | undefined> {
  const loaded = await progress.stage(
    'compute',
    () => loadKept(facility, folders, { env: io.env, today }, date),
    (l) =>
      l.manual
        ? `${l.manual.figures.length} figures, ${l.manual.procedures.length} procedures`
        : 'faults found',
  )
  if (loaded.problems.length > 0)
    io.err(problemsText(loaded.problems, terminalNames(facility, folders, io.cwd), io.colors))
  return isReady(loaded) ? loaded : undefined
}

async function versionOf({ project }: Folders): Promise<string> {
  const about: unknown = JSON.parse(await readFile(path.join(project, 'package.json'), 'utf8'))
  return z.object({ version: z.string() }).parse(about).version
}

/** Everything that needs a browser; the printing itself is loaded only where there is one. */
async function print(
  found: BrowserFound,
  { manual, library }: Ready,
  { version, target }: { readonly version: string; readonly target: string },
  { folders, progress, io }: ManualJob,
): Promise<Printed> {
  const { printManual } = await import('./print-manual.ts')
  const last = await lastBinder(target)
  const before = last?.revision.revision === manual.facility.revision ? last.before : last?.revision
  const cache = printCache(path.join(await cacheFolder(thisMachine(io.env)), 'prints'))
  await cache.prune()
  const job = { found, cache, manual, words: library.words, folders, version, last, before }
  return progress.stage(
    'print',
    (tell) => printManual(job, tell),
    (p) =>
      `binder of ${p.binderPages} pages, field book of ${p.fieldBookPages}, ${p.sheets} sheets`,
  )
}

const isPage = (file: OutputFile): boolean => file.path.endsWith('.html')

/** What the stages have made of a facility. */
type Made = {
  readonly site: readonly OutputFile[]
  /** Script of the worker that keeps the site on a phone. */
  readonly worker: string
  /** What lies beside the pages: the manual in one file, and what was printed. */
  readonly beside: readonly OutputFile[]
  readonly printed: Printed | undefined
  /** Printed files of an earlier build, which stay where none could be made. */
  readonly kept: Kept
  readonly version: string
  /** The browser that printed, as it calls itself, or `none`. */
  readonly browser: string
  readonly target: string
  /** `THIRD-PARTY-NOTICES.txt`. */
  readonly notices: string
}

/** What people take into other programs lies in the manual's own folder too. */
const isIn =
  (folder: string) =>
  ({ path }: OutputFile): boolean =>
    path.startsWith(`${folder}/`)

/** All files of a manual, the record of the build last. */
function outputOf({ manual, contentFiles, facilityFiles }: Ready, made: Made) {
  const { site, worker, beside, printed, kept: before, version, browser, notices } = made
  const tables = site.filter(isIn(tablesFolder))
  const kept = workerFile(worker, site.filter(isKept), [...beside, ...tables], sha256)
  const files: readonly OutputFile[] = [
    ...[...site, kept].map((f) => ({ path: `site/${f.path}`, data: f.data })),
    ...site.filter(isIn(calendarFolder)),
    ...tables,
    ...beside.filter(({ path }) => path === oneFileName),
    ...(printed?.files ?? before.files.filter(({ path }) => !path.startsWith('site/'))),
    ...beside.map((f) => ({ path: `site/${f.path}`, data: f.data })),
    { path: 'THIRD-PARTY-NOTICES.txt', data: notices },
    { path: 'figures.json', data: `${JSON.stringify(composeFiguresFile(manual), null, 1)}\n` },
  ]
  const counts = countsOf(manual, site.filter(isPage).length)
  const data = buildRecord({
    facility: manual.facility.id,
    date: manual.date,
    toolVersion: version,
    browser,
    contentHash: hashOf(contentFiles),
    facilityHash: hashOf(facilityFiles),
    counts,
    sheets: printed ? printed.posted : before.last?.sheets,
    fieldBook: printed ? { pages: printed.fieldBookPages } : before.last?.fieldBook,
    binder: printed
      ? { ...printed.binder, revision: printed.revision, before: printed.before }
      : before.last?.binder,
    older: printed ? undefined : before.older,
    files,
  })
  return { counts, files: [...files, { path: 'build.json', data }] }
}

async function write(ready: Ready, made: Made, job: ManualJob): Promise<MadeManual['built']> {
  const { quiet, progress, io } = job
  const { printed, target, kept } = made
  const { counts, files } = outputOf(ready, made)
  const names = { ours: kept.last?.files ?? new Set(), made: new Set(files.map((f) => f.path)) }
  let carried: readonly string[] = []
  await progress.stage(
    'write',
    () =>
      replaceFolder(target, async (staging) => {
        await writeFiles(staging, files)
        carried = await carryOver(target, staging, names)
      }),
    () => `${files.length} files`,
  )
  if (carried.length > 0 && !quiet) io.err(keptText(carried))
  return {
    name: ready.manual.facility.name,
    counts,
    printed: printed && {
      binderPages: printed.binderPages,
      fieldBookPages: printed.fieldBookPages,
      sheets: printed.sheets,
      toExchange: printed.toExchange,
      before: printed.before && { revision: printed.before.revision },
    },
    files: files.length,
  }
}

/** Prints, or says why it cannot: there is no browser, or it has died. */
async function tryPrint(
  found: BrowserFound | NoBrowser,
  ready: Ready,
  about: { readonly version: string; readonly target: string },
  job: ManualJob,
): Promise<Printed | string> {
  if (found.kind !== 'found') return found.message
  try {
    return await print(found, ready, about, job)
  } catch (error) {
    if (found.browser.connected) throw error
    return `The browser (${found.name}) ended while it was printing; often the computer has too little memory left. Close other programs and build again.`
  }
}

async function makeWith(
  browser: ReturnType<typeof findBrowser>,
  job: ManualJob,
): Promise<MadeManual | ExitCode> {
  const { folders, progress, io } = job
  const ready = await load(job)
  if (!ready) return exit.faults
  const { manual } = ready
  const found = await browser
  const version = await versionOf(folders)
  const notices = thirdPartyNotices((await loadFonts()).licences)
  const target = path.join(folders.dist, manual.facility.id)
  // The pages say how large the files beside them are.
  const attempt = await tryPrint(found, ready, { version, target }, job)
  const printed = typeof attempt === 'string' ? undefined : attempt
  const why = typeof attempt === 'string' ? attempt : ''
  if (!printed && job.needPdfs) {
    io.err(`Nothing was written, because the PDFs cannot be made.\n${why}`)
    return exit.noBrowser
  }
  const kept = await keptPrints(target, ready.manual, printed !== undefined)
  const { site, beside } = await progress.stage(
    'render',
    () => siteWith(printed?.besideSite ?? [], kept, ready.manual, ready.library.words, folders),
    (files) => `${files.site.filter(isPage).length} site pages`,
  )
  const browserName = found.kind === 'found' ? found.version : 'none'
  const worker = await loadWorker(folders)
  const made = {
    site,
    worker,
    beside,
    printed,
    kept,
    version,
    browser: browserName,
    target,
    notices,
  }
  const built = await write(ready, made, job)
  return {
    target,
    problems: ready.problems,
    browser: printed && found.kind === 'found' ? found.name : undefined,
    why: printed ? '' : `${withoutPdfs(kept.files.length, kept.older)}\n${why}`,
    built,
  }
}

/**
 * Makes the manual of a facility and puts it in place of the last one, all or nothing. Without a
 * browser the site and the figures are made all the same, unless PDFs are needed.
 * @returns an exit code where nothing was written; why has been told.
 */
export async function makeManual(job: ManualJob): Promise<MadeManual | ExitCode> {
  // A browser takes a second or two to start, so it starts while the rest is worked out.
  const browser = findBrowser(job.io.env)
  try {
    return await makeWith(browser, job)
  } finally {
    const found = await browser
    if (found.kind === 'found') await found.browser.close()
  }
}
