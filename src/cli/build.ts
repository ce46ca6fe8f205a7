import path from 'node:path'
import { isDay } from '../model/day.ts'
import { cacheFolder } from '../print/browser/cache-folder.ts'
import { thisMachine } from '../print/browser/machine.ts'
import { type Built, summary } from './build-summary.ts'
import { facilityFolder, projectFolders, terminalNames } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { type BuildAsked, inputsOf } from './kept/build-inputs.ts'
import { keepBuild, unchangedBuild } from './kept/kept-build.ts'
import { problemsText } from './problem-text.ts'
import { createProgress } from './progress.ts'
import { unwritable } from './user-fault.ts'

export type BuildOptions = {
  readonly quiet?: boolean
  readonly date?: string
  readonly into?: string
  /** Write nothing where PDFs cannot be made. */
  readonly needPdfs?: boolean
}

/**
 * Makes the manual of a facility and puts it in place of the last one, all or nothing. Where nothing
 * has changed since the last build, its output stays as it is.
 */
export async function build(
  folder: string | undefined,
  options: BuildOptions,
  io: Io,
): Promise<ExitCode> {
  const started = performance.now()
  const { date } = options
  if (date !== undefined && !isDay(date)) {
    io.err(`"${date}" is no date; expected one such as 2027-06-14`)
    return exit.usage
  }
  const quiet = options.quiet === true
  const folders = projectFolders(
    options.into === undefined ? undefined : path.resolve(io.cwd, options.into),
  )
  const facility = facilityFolder(folder, io.cwd, folders)
  const closed = await unwritable(folders.dist)
  if (closed !== undefined) {
    io.err(closed)
    return exit.unwritable
  }
  const progress = createProgress(io, quiet)
  const tell = (built: Omit<Built, 'folder' | 'seconds'>, target: string): void => {
    const shown = path.relative(io.cwd, target) || target
    const seconds = (performance.now() - started) / 1000
    if (!quiet) io.err(summary({ ...built, folder: shown, seconds }))
  }
  const { dist } = folders
  const browser = io.env['OVALKEEP_BROWSER']
  const asked: BuildAsked = { facility, dist, date, today: io.today, browser }
  const cache = await cacheFolder(thisMachine(io.env)).catch(() => undefined)
  const inputs = inputsOf(asked, folders)
  const kept = cache && inputs ? unchangedBuild(cache, asked, inputs) : undefined
  if (kept) {
    const { problems, built, target } = kept
    if (problems.length > 0)
      io.err(problemsText(problems, terminalNames(facility, folders, io.cwd), io.colors))
    if (!quiet) io.err('Nothing has changed since the last build.')
    tell(built, target)
    return exit.fine
  }
  const { makeManual } = await import('./make-manual.ts')
  const needPdfs = options.needPdfs === true
  const job = { facility, date, today: io.today, quiet, needPdfs, folders, progress, io }
  const made = await makeManual(job)
  if (typeof made === 'number') return made
  const { target, problems, built } = made
  tell(built, target)
  if (made.browser === undefined) {
    io.err(made.why)
    return exit.noBrowser
  }
  if (cache !== undefined && inputs !== undefined)
    keepBuild(cache, asked, { inputs, target, problems, built, browser: made.browser })
  return exit.fine
}
