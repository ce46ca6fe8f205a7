import path from 'node:path'
import * as z from 'zod'
import { isDay } from '../model/day.ts'
import { findBrowser } from '../print/browser/find-browser.ts'
import { keepBrowser } from '../print/browser/keep-browser.ts'
import { buildOne, shownTarget } from './build-one.ts'
import { summary } from './build-summary.ts'
import { facilityFolder, projectFolders } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import type { Folders } from './load/load-manual.ts'
import { buildMany } from './many/build-many.ts'
import { type FacilityList, facilityList, type ListedFacility } from './many/facility-list.ts'
import type { ManyBuild } from './many/make-one.ts'
import { type Part, partOf, readPart } from './many/part.ts'
import { worst } from './many/table.ts'
import { createProgress } from './progress.ts'
import { unwritable } from './user-fault.ts'

export type BuildOptions = {
  readonly quiet?: boolean
  readonly date?: string
  readonly into?: string
  /** Write nothing where PDFs cannot be made. */
  readonly needPdfs?: boolean
  /** `3/8`: only those facilities of the list that fall to this part. */
  readonly part?: string
}

/** Makes the manual of one facility, and tells how it goes on. */
async function single(facility: string, job: ManyBuild): Promise<ExitCode> {
  const started = performance.now()
  const { io, quiet } = job
  // To make code for the checks of one facility takes longer than to check it without.
  z.config({ jitless: true })
  const { code, made } = await buildOne({ ...job, facility, progress: createProgress(io, quiet) })
  if (made && !quiet) {
    const seconds = (performance.now() - started) / 1000
    const folder = shownTarget(made.target, io)
    io.err(summary({ ...made.built, folder, seconds }))
    io.err(`Open ${path.join(folder, 'site', 'index.html')}`)
  }
  if (made?.unprinted) io.err(`${made.unprinted.stays}\n${made.unprinted.why}`)
  return code
}

/** Tells what of a list is none of its facilities. @returns an exit code where nothing can be made. */
function tellOthers({ facilities, missing, files, twice }: FacilityList, io: Io) {
  for (const name of missing)
    io.err(`${name} is no folder of a facility: there is no facility.yaml in it.`)
  if (files.length > 0) io.err(`Passed over, since they are files: ${files.join(', ')}`)
  for (const { id, folders } of twice)
    io.err(
      `The same id, ${id}, stands in ${folders.join(' and ')}: their manuals would take each other's place. Change one in its facility.yaml.`,
    )
  return twice.length > 0 || facilities.length === 0 ? exit.faults : undefined
}

function ofPart(
  { facilities }: FacilityList,
  part: Part | undefined,
  { err }: Io,
): readonly ListedFacility[] {
  if (!part) return facilities
  const own = facilities.filter(({ id }) => partOf(id, part.of) === part.number)
  err(`Part ${part.number} of ${part.of}: ${own.length} of ${facilities.length} facilities`)
  return own
}

async function several(
  list: FacilityList,
  part: Part | undefined,
  job: ManyBuild,
): Promise<ExitCode> {
  const nothing = tellOthers(list, job.io)
  if (nothing !== undefined) return nothing
  const own = ofPart(list, part, job.io)
  const code = own.length > 0 ? await buildMany(own, job) : exit.fine
  return worst([code, list.missing.length > 0 ? exit.faults : exit.fine])
}

const withBrowser = async (
  { env }: Io,
  work: (browser: ReturnType<typeof keepBrowser>) => Promise<ExitCode>,
): Promise<ExitCode> => {
  const browser = keepBrowser(() => findBrowser(env))
  try {
    return await work(browser)
  } finally {
    await browser.close()
  }
}

/** Why the command line cannot be followed, in words; undefined where it can. */
function misunderstood(named: readonly string[], { date, part }: BuildOptions): string | undefined {
  if (date !== undefined && !isDay(date))
    return `"${date}" is no date; expected one such as 2027-06-14`
  if (part === undefined) return undefined
  if (named.length === 0) return '--part needs a list of folders, of which it takes its part'
  return readPart(part) ? undefined : `"${part}" is no part; expected one such as 3/8`
}

/** The project's folders, with the one that is written to. */
const foldersFor = ({ into }: BuildOptions, { cwd }: Io): Folders =>
  projectFolders(into === undefined ? undefined : path.resolve(cwd, into))

/**
 * Makes the manuals of facilities, each put in place of its last one, all or nothing.
 * @param named Their folders; the demo's where none is named.
 */
export async function build(
  named: readonly string[],
  options: BuildOptions,
  io: Io,
): Promise<ExitCode> {
  const wrong = misunderstood(named, options)
  if (wrong !== undefined) {
    io.err(wrong)
    return exit.usage
  }
  const folders = foldersFor(options, io)
  const closed = await unwritable(folders.dist)
  if (closed !== undefined) {
    io.err(closed)
    return exit.unwritable
  }
  const { date, part } = options
  const [quiet, needPdfs] = [options.quiet === true, options.needPdfs === true]
  return withBrowser(io, async (browser) => {
    const job = { date, quiet, needPdfs, folders, browser, io }
    if (named.length <= 1 && part === undefined && !named[0]?.endsWith('*'))
      return single(facilityFolder(named[0], io.cwd, folders), job)
    const list = await facilityList(named, io.cwd, folders)
    return several(list, part === undefined ? undefined : readPart(part), job)
  })
}
