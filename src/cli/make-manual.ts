import { readFile } from 'node:fs/promises'
import path from 'node:path'
import * as z from 'zod'
import { composeFiguresFile } from '../compose/figures-file.ts'
import type { Manual } from '../model/manual.ts'
import type { OutputFile } from '../model/output-file.ts'
import { hasErrors, type Problem } from '../model/problem.ts'
import type { KeptBrowser } from '../print/browser/keep-browser.ts'
import { once } from '../print/once.ts'
import { isNoRoom } from '../print/page/no-room.ts'
import { calendarFolder } from '../render/calendars/calendar-file.ts'
import { workerFile } from '../render/site/kept-site.ts'
import { oneFileName } from '../render/site/papers.ts'
import { isKept } from '../render/site/site-files.ts'
import { tablesFolder } from '../render/tables/tables.ts'
import { buildRecord, hashedOnce, hashOf } from '../write/build-record.ts'
import { carryOver } from '../write/carry-over.ts'
import { lastBuild } from '../write/last-build.ts'
import { replaceFolder } from '../write/replace-folder.ts'
import { thirdPartyNotices } from '../write/third-party-notices.ts'
import { writeFiles } from '../write/write-files.ts'
import { type Built, countsOf, keptText, withoutPdfs } from './build-summary.ts'
import { terminalNames } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { type Kept, keptPrints } from './kept-prints.ts'
import { loadFonts } from './load/load-fonts.ts'
import { loadKept } from './load/load-kept.ts'
import type { Folders, LoadedManual } from './load/load-manual.ts'
import { loadWorker } from './load/load-scripts.ts'
import type { Printed } from './print-manual.ts'
import { printWith } from './print-with.ts'
import { problemsText } from './problem-text.ts'
import type { Progress } from './progress.ts'
import { oneFileFirst, siteWith } from './site-with.ts'
import { unwritable } from './user-fault.ts'

/** A manual without faults. */
export type Ready = LoadedManual & {
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
  /** The browser that prints, shared by all manuals of one command. */
  readonly browser: KeptBrowser
  readonly io: Io
}

/** What is said where nothing could be printed. */
export type Unprinted = { readonly stays: string; readonly why: string }

/** A manual that was written. */
export type MadeManual = {
  readonly target: string
  readonly problems: readonly Problem[]
  /** The browser that printed, as it was found; nothing where none did. */
  readonly browser: string | undefined
  /** Where none did: what stays of earlier prints, and why. */
  readonly unprinted: Unprinted | undefined
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
  const hashed = hashedOnce()
  const hash = (data: OutputFile['data']): string => hashed(data).sha256
  const kept = workerFile(worker, site.filter(isKept), [...beside, ...tables], hash)
  const all: readonly OutputFile[] = [
    ...[...site, kept].map((f) => ({ path: `site/${f.path}`, data: f.data })),
    ...site.filter(isIn(calendarFolder)),
    ...tables,
    ...beside.filter(({ path }) => path === oneFileName),
    ...(printed?.files ?? before.files.filter(({ path }) => !path.startsWith('site/'))),
    ...beside.map((f) => ({ path: `site/${f.path}`, data: f.data })),
    { path: 'THIRD-PARTY-NOTICES.txt', data: notices },
    { path: 'figures.json', data: `${JSON.stringify(composeFiguresFile(manual), null, 1)}\n` },
  ]
  const files = all.map(({ path, data }) => ({ path, ...hashed(data) }))
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
  const { printed, target } = made
  const { counts, files } = outputOf(ready, made)
  const carried = new Map<string, string>()
  const carry = async (from: string, to: string): Promise<void> => {
    // Another build may have put its own there since this one has begun.
    const ours = (await lastBuild(from))?.files ?? new Set()
    await carryOver(from, to, { ours, made: new Set(files.map((f) => f.path)), carried })
  }
  await progress.stage(
    'write',
    () =>
      replaceFolder(target, {
        fill: async (staging) => {
          await writeFiles(staging, files)
          await carry(target, staging)
        },
        settle: (old) => carry(old, target),
      }),
    () => `${files.length} files`,
  )
  if (carried.size > 0 && !quiet) io.err(keptText([...carried.values()]))
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

/** Where the facility says more than a page holds, the rest of its manual is made all the same. */
function withoutRoom(error: unknown) {
  if (!isNoRoom(error)) throw error
  return {
    kind: 'no-room',
    message: `The PDFs were not made, because words have no room on their page: ${error.message}\nShorten what the facility file says there (names, notes, ways), and build again. Where nothing there is long, please report it with the line above.`,
  } as const
}

/**
 * Makes the manual of a facility and puts it in place of the last one, all or nothing. Without a
 * browser the site and the figures are made all the same, unless PDFs are needed.
 * @returns an exit code where nothing was written; why has been told.
 */
export async function makeManual(job: ManualJob): Promise<MadeManual | ExitCode> {
  const { folders, progress, io, browser } = job
  // A browser takes a second or two to start, so it starts while the rest is worked out.
  browser.warm()
  const ready = await load(job)
  if (!ready) return exit.faults
  const { manual } = ready
  const version = await versionOf(folders)
  const target = path.join(folders.dist, manual.facility.id)
  const shut = await unwritable(target)
  if (shut !== undefined) {
    io.err(shut)
    return exit.unwritable
  }
  const { words } = ready.library
  const first = once(() => oneFileFirst(manual, words, folders))
  // The pages say how large the files beside them are.
  const used = await browser
    .use((found) => printWith(found, ready, { version, target, meanwhile: first }, job))
    .catch(withoutRoom)
  const printed = used.kind === 'done' ? used.value : undefined
  const why = used.kind === 'done' ? '' : used.message
  if (!printed && job.needPdfs) {
    io.err(`Nothing was written, because the PDFs cannot be made.\n${why}`)
    return exit.noPdfs
  }
  const kept = await keptPrints(target, manual, printed !== undefined)
  const { site, beside } = await progress.stage(
    'render',
    async () => siteWith(printed?.besideSite ?? [], kept, manual, words, await first()),
    (files) => `${files.site.filter(isPage).length} site pages`,
  )
  const built = await write(
    ready,
    {
      site,
      worker: await loadWorker(folders),
      beside,
      printed,
      kept,
      version,
      browser: used.kind === 'done' ? used.browser.version : 'none',
      target,
      notices: thirdPartyNotices((await loadFonts()).licences),
    },
    job,
  )
  return {
    target,
    problems: ready.problems,
    browser: used.kind === 'done' ? used.browser.name : undefined,
    unprinted: printed ? undefined : { stays: withoutPdfs(kept.files.length, kept.older), why },
    built,
  }
}
