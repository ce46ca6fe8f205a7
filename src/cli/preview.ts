import path from 'node:path'
import { watch } from 'chokidar'
import { hasErrors } from '../model/problem.ts'
import { facilityFolder, projectFolders } from './folders.ts'
import { type ExitCode, exit, type Io } from './io.ts'
import { loadManual } from './load/load-manual.ts'
import { problemsText } from './problem-text.ts'
import { type Shown, serve } from './serve.ts'
import { siteOnDemand } from './site-files.ts'

/** Editors save in several steps; a change is taken up when this long nothing more has come, ms. */
const settle = 25

/**
 * Shows the site on the loopback address and follows every change of the facility, the library and
 * the templates. Runs until the process is interrupted. PDFs are not made here.
 */
export async function preview(
  folder: string | undefined,
  options: { readonly port: string },
  io: Io,
): Promise<ExitCode> {
  const port = Number(options.port)
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    io.err(`"${options.port}" is no port; expected a number from 0 to 65535`)
    return exit.usage
  }
  const folders = projectFolders()
  const facility = facilityFolder(folder, io.cwd, folders)
  let shown: Shown = { files: new Map(), faults: 'Nothing has been built yet' }
  const rebuild = async (): Promise<void> => {
    const started = performance.now()
    const { manual, library, problems } = await loadManual(facility, folders, io.today)
    if (problems.length > 0) io.err(problemsText(problems, io.colors))
    if (!manual || !library || hasErrors(problems)) {
      shown = { files: shown.files, faults: problemsText(problems, false) }
      return
    }
    shown = { files: await siteOnDemand(manual, library.words, folders), faults: undefined }
    io.err(`${shown.files.size} files ready in ${Math.round(performance.now() - started)} ms`)
  }
  await rebuild()
  const server = await serve(() => shown, port)
  io.out(`Preview at ${server.address} (stop with Ctrl-C)`)

  let timer: NodeJS.Timeout | undefined
  let building = Promise.resolve()
  const watcher = watch(
    [facility, folders.content, folders.templates, path.join(folders.project, 'shared')],
    { ignoreInitial: true },
  )
  watcher.on('all', () => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      // Builds follow one another, so that an older one never overwrites a newer one.
      building = building
        .then(rebuild)
        .then(server.changed, (error: unknown) => io.err(String(error)))
    }, settle)
  })
  await new Promise<void>((resolve) => {
    process.once('SIGINT', resolve)
    process.once('SIGTERM', resolve)
  })
  await watcher.close()
  await server.close()
  return exit.fine
}
