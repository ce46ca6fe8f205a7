import path from 'node:path'
import { watch } from 'chokidar'
import open from 'open'
import { hasErrors } from '../../model/problem.ts'
import { facilityFolder, projectFolders, terminalNames } from '../folders.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { loadKept } from '../load/load-kept.ts'
import type { Folders } from '../load/load-manual.ts'
import { interrupted, portFor, portText } from '../loopback/listen.ts'
import { problemsText } from '../problem-text.ts'
import { siteOnDemand } from '../site-files.ts'
import type { Shown } from './answer.ts'
import { type Served, serve } from './serve.ts'

export type PreviewOptions = {
  /** Port on the loopback address, as typed; 0 lets the system choose. */
  readonly port: string
  /** Whether the browser of this computer shows the site at once. */
  readonly open: boolean
}

/** Editors save in several steps; a change is taken up when this long nothing more has come, ms. */
const settle = 25

/** What is shown after a change: new pages, or the old ones behind a list of faults. */
async function shownNow(facility: string, folders: Folders, before: Shown, io: Io): Promise<Shown> {
  const started = performance.now()
  const { manual, library, problems } = await loadKept(facility, folders, io)
  const names = terminalNames(facility, folders, io.cwd)
  if (problems.length > 0) io.err(problemsText(problems, names, io.colors))
  if (!manual || !library || hasErrors(problems))
    return { files: before.files, faults: problemsText(problems, names, false) }
  const files = await siteOnDemand(manual, library.words, folders)
  io.err(`${files.size} files ready in ${Math.round(performance.now() - started)} ms`)
  return { files, faults: undefined }
}

async function startServer(
  current: () => Shown,
  port: number,
  io: Io,
): Promise<Served | undefined> {
  try {
    return await serve(current, port)
  } catch (fault) {
    io.err(portText(port, fault))
    return undefined
  }
}

/** Builds follow one another, so that an older one never overwrites a newer one. */
function followChanges(paths: readonly string[], rebuild: () => Promise<void>, io: Io) {
  let timer: NodeJS.Timeout | undefined
  let building = Promise.resolve()
  const watcher = watch([...paths], { ignoreInitial: true })
  watcher.on('all', () => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      building = building.then(rebuild).catch((error: unknown) => io.err(String(error)))
    }, settle)
  })
  return watcher
}

/**
 * Shows the site on the loopback address and follows every change of the facility, the library and
 * the templates. Runs until the process is interrupted. PDFs are not made here.
 */
export async function preview(
  folder: string | undefined,
  options: PreviewOptions,
  io: Io,
): Promise<ExitCode> {
  const port = portFor(options.port, io)
  if (port === undefined) return exit.usage
  const folders = projectFolders()
  const facility = facilityFolder(folder, io.cwd, folders)
  let shown: Shown = { files: new Map(), faults: 'Nothing has been built yet' }
  shown = await shownNow(facility, folders, shown, io)
  const server = await startServer(() => shown, port, io)
  if (!server) return exit.usage
  io.out(`Preview at ${server.address} (stop with Ctrl-C)`)
  // A computer without a browser or a screen still has the address.
  if (options.open) await open(server.address).catch(() => undefined)
  const rebuild = async (): Promise<void> => {
    shown = await shownNow(facility, folders, shown, io)
    server.changed()
  }
  const paths = [facility, folders.content, folders.templates, path.join(folders.project, 'shared')]
  const watcher = followChanges(paths, rebuild, io)
  await interrupted()
  await watcher.close()
  await server.close()
  return exit.fine
}
