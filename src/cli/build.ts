import { readFile } from 'node:fs/promises'
import path from 'node:path'
import * as z from 'zod'
import { composeFiguresFile } from '../compose/figures-file.ts'
import { isDay } from '../model/day.ts'
import type { Manual } from '../model/manual.ts'
import { hasErrors } from '../model/problem.ts'
import { cacheFolder } from '../print/browser/cache-folder.ts'
import { findBrowser } from '../print/browser/find-browser.ts'
import { thisMachine } from '../print/browser/machine.ts'
import { printCache } from '../print/press/print-cache.ts'
import { buildRecord, hashOf } from '../write/build-record.ts'
import { replaceFolder } from '../write/replace-folder.ts'
import { type OutputFile, writeFiles } from '../write/write-files.ts'
import { facilityFolder, projectFolders } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { type Folders, type LoadedManual, loadManual } from './load/load-manual.ts'
import type { Printed } from './print-manual.ts'
import { problemsText } from './problem-text.ts'
import { createProgress, type Progress } from './progress.ts'
import { siteFiles } from './site-files.ts'

export type BuildOptions = {
  readonly quiet?: boolean
  readonly date?: string
  readonly into?: string
}

const laidPages = z.object({
  revision: z.string(),
  date: z.string(),
  pages: z.array(z.object({ label: z.string(), print: z.string() })),
})

const lastBuild = z.object({
  binder: z.object({
    labels: z.record(z.string(), z.string()),
    pages: z.record(z.string(), z.number()),
    revision: laidPages,
    before: laidPages.optional(),
  }),
})

function counts(manual: Manual, pages: number) {
  return {
    pages,
    figures: manual.figures.length,
    estimates: manual.figures.filter((f) => f.estimate).length,
    findings: manual.findings.length,
    worksheets: manual.worksheets.length,
    procedures: manual.procedures.length,
  }
}

function summary(
  manual: Manual,
  files: number,
  pages: number,
  printed: Printed | undefined,
  target: string,
  started: number,
): string {
  const c = counts(manual, pages)
  const paper = printed ? `, binder of ${printed.binderPages} pages, ${printed.sheets} sheets` : ''
  const exchange = printed?.before
    ? `, ${printed.toExchange} leaves to exchange since revision ${printed.before.revision}`
    : ''
  return `${manual.facility.name}: ${pages} site pages${paper}${exchange}; ${c.figures} figures (${c.estimates} estimates), ${c.findings} findings; ${files} files in ${target}; ${((performance.now() - started) / 1000).toFixed(1)} s`
}

type Ready = LoadedManual & {
  readonly manual: Manual
  readonly library: NonNullable<LoadedManual['library']>
}

const isReady = (loaded: LoadedManual): loaded is Ready =>
  loaded.manual !== undefined && loaded.library !== undefined && !hasErrors(loaded.problems)

/**
 * What is known of the binder of the last build of the same facility: it saves prints, and tells
 * which pages are new.
 */
async function lastBinder(
  target: string,
): Promise<z.output<typeof lastBuild>['binder'] | undefined> {
  try {
    return lastBuild.parse(JSON.parse(await readFile(path.join(target, 'build.json'), 'utf8')))
      .binder
  } catch {
    // No build before this one, or one by another version: the numbers are found by printing.
    return undefined
  }
}

/**
 * Makes the manual of a facility and puts it in place of the last one, all or nothing. Without a
 * browser the site and the figures are made all the same.
 */
export async function build(
  folder: string | undefined,
  options: BuildOptions,
  io: Io,
): Promise<ExitCode> {
  const started = performance.now()
  const date = options.date ?? io.today
  if (!isDay(date)) {
    io.err(`"${date}" is no date; expected one such as 2027-06-14`)
    return exit.usage
  }
  const quiet = options.quiet === true
  const folders = projectFolders(
    options.into === undefined ? undefined : path.resolve(io.cwd, options.into),
  )
  const progress = createProgress(io, quiet)
  // A browser takes a second or two to start, so it starts while the rest is worked out.
  const browser = findBrowser(io.env)
  try {
    return await buildWith(browser, { folder, date, quiet, folders, progress, io, started })
  } finally {
    const found = await browser
    if (found.kind === 'found') await found.browser.close()
  }
}

type Job = {
  readonly folder: string | undefined
  readonly date: string
  readonly quiet: boolean
  readonly folders: Folders
  readonly progress: Progress
  readonly io: Io
  readonly started: number
}

async function buildWith(
  browser: ReturnType<typeof findBrowser>,
  { folder, date, quiet, folders, progress, io, started }: Job,
): Promise<ExitCode> {
  const loaded = await progress.stage(
    'compute',
    () => loadManual(facilityFolder(folder, io.cwd, folders), folders, date),
    (l) =>
      l.manual
        ? `${l.manual.figures.length} figures, ${l.manual.procedures.length} procedures`
        : 'faults found',
  )
  if (loaded.problems.length > 0) io.err(problemsText(loaded.problems, io.colors))
  if (!isReady(loaded)) return exit.faults
  const { manual, library } = loaded

  const site = await progress.stage(
    'render',
    () => siteFiles(manual, library.words, folders),
    (files) => `${files.filter((f) => f.path.endsWith('.html')).length} site pages`,
  )
  const version = String(
    (
      JSON.parse(await readFile(path.join(folders.project, 'package.json'), 'utf8')) as {
        version: string
      }
    ).version,
  )
  const hashes = {
    contentHash: hashOf(loaded.contentFiles),
    facilityHash: hashOf(loaded.facilityFiles),
  }
  const target = path.join(folders.dist, manual.facility.id)
  const found = await browser
  let printed: Printed | undefined
  if (found.kind === 'found') {
    const { printManual } = await import('./print-manual.ts')
    const last = await lastBinder(target)
    const cache = printCache(path.join(await cacheFolder(thisMachine(io.env)), 'prints'))
    await cache.prune()
    printed = await progress.stage(
      'print',
      (tell) =>
        printManual(
          {
            found,
            cache,
            manual,
            words: library.words,
            folders,
            version,
            last,
            before:
              last?.revision.revision === manual.facility.revision ? last.before : last?.revision,
          },
          tell,
        ),
      (p) => `binder of ${p.binderPages} pages, ${p.sheets} sheets`,
    )
  }

  const pages = site.filter((f) => f.path.endsWith('.html')).length
  const output: OutputFile[] = [
    ...site.map((f) => ({ path: `site/${f.path}`, data: f.data })),
    ...(printed?.files ?? []),
    { path: 'figures.json', data: `${JSON.stringify(composeFiguresFile(manual), null, 1)}\n` },
  ]
  const record = buildRecord({
    facility: manual.facility.id,
    date,
    toolVersion: version,
    browser: found.kind === 'found' ? found.version : 'none',
    ...hashes,
    counts: counts(manual, pages),
    binder: printed && { ...printed.binder, revision: printed.revision, before: printed.before },
    files: output,
  })
  const files = [...output, { path: 'build.json', data: record }]
  await progress.stage(
    'write',
    () => replaceFolder(target, (staging) => writeFiles(staging, files)),
    () => `${files.length} files`,
  )
  if (!quiet)
    io.err(
      summary(
        manual,
        files.length,
        pages,
        printed,
        path.relative(io.cwd, target) || target,
        started,
      ),
    )
  if (found.kind === 'found') return exit.fine
  io.err(`The site and the figures were made; the PDFs were not.\n${found.message}`)
  return exit.noBrowser
}
