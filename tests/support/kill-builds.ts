import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { build } from 'esbuild'
import { folders, testsFolder } from './demo.ts'

/** When a build is killed: some time after a stage has begun, or at an operation of the write. */
export type Kill =
  | { readonly stage: string; readonly after: number }
  | { readonly at: number; readonly when: 'before' | 'after' }

const facility = path.join(testsFolder, 'fixtures', 'small', 'facility')

/** Bundles the build that is killed, once. */
export async function bundledBuild(): Promise<{
  readonly file: string
  readonly remove: () => Promise<void>
}> {
  const cache = path.join(folders.project, 'node_modules', '.cache')
  await mkdir(cache, { recursive: true })
  const folder = await mkdtemp(path.join(cache, 'killed-'))
  const outfile = path.join(folder, 'killed-build.mjs')
  await build({
    entryPoints: [path.join(import.meta.dirname, 'killed-build.ts')],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    logLevel: 'error',
  })
  return { file: outfile, remove: () => rm(folder, { recursive: true }) }
}

type Run = {
  readonly file: string
  readonly content: string
  readonly dist: string
  readonly date: string
  readonly env: NodeJS.ProcessEnv
}

/** Runs a build to its end, or kills it. @returns what it said, and whether it was killed. */
export function runBuild(
  { file, content, dist, date, env }: Run,
  kill?: Kill,
): Promise<{ readonly said: string; readonly wasKilled: boolean }> {
  const own = kill && 'at' in kill ? [String(kill.at), kill.when] : []
  const child = spawn(process.execPath, [file, facility, content, dist, date, ...own], {
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let said = ''
  const hear = (data: Buffer): void => {
    said += data.toString('utf8')
    if (kill && 'stage' in kill && said.split('\n').includes(kill.stage))
      setTimeout(() => child.kill('SIGKILL'), kill.after)
  }
  if (kill && 'stage' in kill && kill.stage === 'start')
    setTimeout(() => child.kill('SIGKILL'), kill.after)
  child.stdout.on('data', hear)
  child.stderr.on('data', hear)
  return new Promise((resolve) =>
    child.once('close', (_, signal) => resolve({ said, wasKilled: signal === 'SIGKILL' })),
  )
}

const sha256 = (data: Uint8Array): string => createHash('sha256').update(data).digest('hex')

/**
 * The date of the manual in a folder, where it is whole: every file of its record is there with its
 * bytes. Else what is wrong with it.
 */
export async function wholeManual(folder: string): Promise<string> {
  const text = await readFile(path.join(folder, 'build.json'), 'utf8').catch(() => undefined)
  if (text === undefined) return 'no record'
  const { date, files } = JSON.parse(text) as {
    readonly date: string
    readonly files: readonly { readonly path: string; readonly sha256: string }[]
  }
  for (const file of files) {
    const data = await readFile(path.join(folder, file.path)).catch(() => undefined)
    if (!data || sha256(data) !== file.sha256) return `${file.path} is not whole`
  }
  const photo = await readFile(path.join(folder, 'site', 'photo.jpg'), 'utf8').catch(() => '')
  return photo === 'theirs' ? date : 'what somebody has put there is lost'
}

export const putPhoto = (folder: string): Promise<void> =>
  writeFile(path.join(folder, 'site', 'photo.jpg'), 'theirs')

/** Whether what lies below `dist` is a whole manual: in its place, or beside it between two renames. */
export async function stateOf(
  dist: string,
  id: string,
): Promise<{ readonly date: string; readonly isAside: boolean }> {
  const names = await readdir(dist)
  const aside = names.find((name) => name.startsWith(`.old-${id}-`))
  const isAside = !names.includes(id)
  return { date: await wholeManual(path.join(dist, isAside ? (aside ?? id) : id)), isAside }
}
