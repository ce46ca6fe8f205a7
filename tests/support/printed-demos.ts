import { mkdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { inject } from 'vitest'
import { build } from '../../src/cli/build.ts'
import type { Io } from '../../src/cli/io.ts'
import { date, demoFolder } from './demo.ts'

/** A demo facility's manual as a build has made it. */
export type PrintedDemo = {
  /** The folder with the site and all PDFs. */
  readonly folder: string
  /** What the build has said, line by line. */
  readonly said: readonly string[]
}

/**
 * One on letter paper with everything, one on A4 with little; a third would cost a minute and show
 * nothing new.
 */
export const printedDemos = ['larkmoor', 'brambleford'] as const

/** Builds a facility into a folder. @returns what the build has said. */
export async function buildInto(
  into: string,
  facility: string,
  { quiet = false, env = process.env }: { readonly quiet?: boolean; readonly env?: Io['env'] } = {},
): Promise<readonly string[]> {
  const said: string[] = []
  const say = (line: string): void => void said.push(line)
  const io: Io = {
    out: say,
    err: say,
    colors: false,
    terminal: false,
    env,
    cwd: into,
    today: date,
  }
  const code = await build([facility], { into, date, quiet }, io)
  if (code !== 0) throw new Error(`exit code ${code}\n${said.join('\n')}`)
  return said
}

const isTaken = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EEXIST'

/** @returns whether this is the first to ask. */
async function isFirst(lock: string): Promise<boolean> {
  try {
    await mkdir(lock)
    return true
  } catch (error) {
    if (isTaken(error)) return false
    throw error
  }
}

async function waitFor(file: string): Promise<string> {
  for (;;) {
    const text = await readFile(file, 'utf8').catch(() => undefined)
    if (text?.endsWith('\n')) return text
    await wait(200)
  }
}

/**
 * Made once in a run, by the first test file that asks for it; the others wait.
 * @param make Makes it below a folder. @returns what `make` has said.
 */
export async function onceInRun(
  name: string,
  make: (root: string) => Promise<readonly string[]>,
): Promise<{ readonly root: string; readonly said: readonly string[] }> {
  const root = inject('printedFolder')
  const log = path.join(root, `${name}.log`)
  if (await isFirst(path.join(root, `${name}.lock`))) {
    const said = await make(root).catch((e: unknown) => [`failed: ${e}`])
    await writeFile(log, `${JSON.stringify(said)}\n`)
  }
  const said: readonly string[] = JSON.parse(await waitFor(log))
  if (said[0]?.startsWith('failed: ')) throw new Error(said[0])
  return { root, said }
}

/** A demo with everything that is printed of it. */
export async function printedDemo(id: (typeof printedDemos)[number]): Promise<PrintedDemo> {
  const { root, said } = await onceInRun(id, (into) => buildInto(into, demoFolder(id)))
  return { folder: path.join(root, id), said }
}
