import { execFile } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, readFile, rename, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { cacheFolder } from './cache-folder.ts'
import type { Environment } from './candidate.ts'

const run = promisify(execFile)

const PACKAGE = '@sparticuz/chromium'

/**
 * Where the package unpacks to is decided by TMPDIR; the second variable makes it unpack its
 * libraries too.
 */
const unpackInto = (folder: string, entry: string, env: Environment): Promise<unknown> =>
  run(
    process.execPath,
    [
      '--input-type=module',
      '-e',
      'const { default: found } = await import(process.argv[1]); await (found.default ?? found).executablePath()',
      pathToFileURL(entry).href,
    ],
    {
      env: { ...env, NODE_OPTIONS: '', TMPDIR: folder, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' },
    },
  )

const packageEntry = (): string => {
  try {
    return createRequire(import.meta.url).resolve(PACKAGE)
  } catch {
    throw new Error(`the optional package ${PACKAGE} is not installed`)
  }
}

const packageVersion = async (entry: string): Promise<string> => {
  const about: unknown = JSON.parse(
    await readFile(join(dirname(entry), '..', '..', 'package.json'), 'utf8'),
  )
  if (typeof about === 'object' && about !== null && 'version' in about)
    return String(about.version)
  throw new Error(`the package ${PACKAGE} does not say its version`)
}

/**
 * Unpacks the browser of the npm package once for each of its versions.
 *
 * Left to itself the package unpacks into the shared temporary folder, uses whatever lies there
 * under its name, and two processes at once meet a half-written program. Here each unpacks into a
 * folder of its own, and one rename puts it in place whole; who comes second drops what it
 * unpacked.
 * @returns the folder with `chromium`, its fonts and its libraries.
 */
export const unpackBundled = async (env: Environment): Promise<string> => {
  const entry = packageEntry()
  const cache = await cacheFolder(env)
  const folder = join(cache, `chromium-${await packageVersion(entry)}`)
  if (existsSync(join(folder, 'chromium'))) return folder
  const own = await mkdtemp(join(cache, 'unpack-'))
  try {
    await unpackInto(own, entry, env)
    await rename(own, folder)
  } catch (error) {
    await rm(own, { recursive: true, force: true })
    if (!existsSync(join(folder, 'chromium'))) throw error
  }
  return folder
}
