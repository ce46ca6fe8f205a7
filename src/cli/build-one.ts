import path from 'node:path'
import { cacheFolder } from '../print/browser/cache-folder.ts'
import type { KeptBrowser } from '../print/browser/keep-browser.ts'
import { thisMachine } from '../print/browser/machine.ts'
import type { Built } from './build-summary.ts'
import { terminalNames } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { type BuildAsked, inputsOf } from './kept/build-inputs.ts'
import { keepBuild, unchangedBuild } from './kept/kept-build.ts'
import type { Folders } from './load/load-manual.ts'
import type { Unprinted } from './make-manual.ts'
import { problemsText } from './problem-text.ts'
import type { Progress } from './progress.ts'

/** What is asked of one build, and with what it is made. */
export type OneBuild = {
  readonly facility: string
  readonly date: string | undefined
  readonly quiet: boolean
  /** Write nothing where PDFs cannot be made. */
  readonly needPdfs: boolean
  readonly folders: Folders
  readonly progress: Progress
  readonly browser: KeptBrowser
  readonly io: Io
}

/** What came of it; nothing was written where `made` is missing, and why has been told. */
export type OneBuilt = {
  readonly code: ExitCode
  readonly made?: {
    readonly target: string
    readonly built: Omit<Built, 'folder' | 'seconds'>
    readonly unprinted?: Unprinted
  }
}

/**
 * Makes the manual of a facility and puts it in place of the last one, all or nothing. Where nothing
 * has changed since the last build, its output stays as it is.
 */
export async function buildOne(job: OneBuild): Promise<OneBuilt> {
  const { facility, date, quiet, folders, io } = job
  const asked: BuildAsked = {
    facility,
    dist: folders.dist,
    date,
    today: io.today,
    browser: io.env['OVALKEEP_BROWSER'],
  }
  const cache = await cacheFolder(thisMachine(io.env)).catch(() => undefined)
  const inputs = inputsOf(asked, folders)
  const kept = cache && inputs ? unchangedBuild(cache, asked, inputs) : undefined
  if (kept) {
    const { problems, built, target } = kept
    if (problems.length > 0)
      io.err(problemsText(problems, terminalNames(facility, folders, io.cwd), io.colors))
    if (!quiet) io.err('Nothing has changed since the last build.')
    return { code: exit.fine, made: { target, built } }
  }
  const { makeManual } = await import('./make-manual.ts')
  const made = await makeManual({ ...job, today: io.today })
  if (typeof made === 'number') return { code: made }
  const { target, problems, built, browser, unprinted } = made
  if (unprinted) return { code: exit.noPdfs, made: { target, built, unprinted } }
  if (cache !== undefined && inputs !== undefined && browser !== undefined)
    keepBuild(cache, asked, { inputs, target, problems, built, browser })
  return { code: exit.fine, made: { target, built } }
}

/** How the folder that was written is called on the terminal. */
export const shownTarget = (target: string, { cwd }: Pick<Io, 'cwd'>): string =>
  path.relative(cwd, target) || target
