import { execFile } from 'node:child_process'
import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import type { Environment, Machine } from './machine.ts'

// All that is known of the npm package @sparticuz/chromium. It is made for a computing service,
// and decides by environment variables what to unpack and where; here it is told what makes it
// unpack everything into a folder of ours, in a process of its own that nothing else is told by.

const run = promisify(execFile)

/** As readers of messages know it. */
export const chromiumPackage = '@sparticuz/chromium'

/**
 * Where the package is.
 * @throws Error when it is not installed: it is optional.
 */
export function chromiumEntry(): string {
  try {
    return createRequire(import.meta.url).resolve(chromiumPackage)
  } catch {
    throw new Error(`the optional package ${chromiumPackage} is not installed`)
  }
}

/** @throws Error when the package does not say its version. */
export async function chromiumVersion(entry: string): Promise<string> {
  const file = path.join(path.dirname(entry), '..', '..', 'package.json')
  const about: unknown = JSON.parse(await readFile(file, 'utf8'))
  if (typeof about === 'object' && about !== null && 'version' in about)
    return String(about.version)
  throw new Error(`the package ${chromiumPackage} does not say its version`)
}

/** Its browser is built for this kind of machine alone. */
export const runsOn = ({ platform, arch }: Pick<Machine, 'platform' | 'arch'>): boolean =>
  platform === 'linux' && arch === 'x64'

const unpacking =
  'const { default: found } = await import(process.argv[1]); await (found.default ?? found).executablePath()'

/** Environment in which the package unpacks all it has into a folder. */
export const unpackEnvironment = (folder: string, env: Environment): Environment => ({
  ...env,
  NODE_OPTIONS: '',
  // It unpacks into the temporary folder.
  TMPDIR: folder,
  // Its libraries are unpacked only where it believes to run at that service.
  AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x',
})

/** Unpacks the browser, its fonts and its libraries into a folder. */
export async function unpackChromium(
  entry: string,
  folder: string,
  env: Environment,
): Promise<void> {
  const args = ['--input-type=module', '-e', unpacking, pathToFileURL(entry).href]
  await run(process.execPath, args, { env: { ...unpackEnvironment(folder, env) } })
}

/** Where the browser stands in a folder into which it was unpacked. */
export const executableIn = (folder: string): string => path.join(folder, 'chromium')

/** The fonts' list that it brings along serves where the machine has none. */
export const fontEnvironment = (
  folder: string,
  exists: (file: string) => boolean = existsSync,
): Environment =>
  exists('/etc/fonts/fonts.conf') ? {} : { FONTCONFIG_PATH: path.join(folder, 'fonts') }

/** Its own libraries, for machines that lack some. */
export const libraryEnvironment = (folder: string): Environment => ({
  LD_LIBRARY_PATH: path.join(folder, 'al2023', 'lib'),
})
