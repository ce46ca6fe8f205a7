import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Folders } from '../load/load-manual.ts'

const filesBelow = (folder: string, endings: readonly string[]): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => endings.includes(path.extname(name)))
    .sort()
    .map((name) => path.join(folder, name))

/** Where a program runs: another version may sort, write or reckon otherwise. */
const runtime = `${process.version} ${process.platform} ${process.arch}`

/**
 * Stands for a part of the program, and for all packages: others may do otherwise.
 * @param part A folder of `src`; all of it, with the data that it takes in, where none is named.
 */
export function programHash(folders: Folders, part = ''): string {
  const known = hashes.get(`${folders.project} ${part}`) ?? hashOfSources(folders, part)
  hashes.set(`${folders.project} ${part}`, known)
  return known
}

/** A program that runs is the one that was started, whatever becomes of its files. */
const hashes = new Map<string, string>()

function hashOfSources({ project, shared }: Folders, part: string): string {
  const files = [
    ...filesBelow(path.join(project, 'src', part), ['.ts']),
    ...(part === '' ? filesBelow(shared, ['.json']) : []),
    path.join(project, 'package-lock.json'),
  ]
  const hash = createHash('sha256').update(runtime)
  for (const file of files) hash.update(readFileSync(file)).update('\0')
  return hash.digest('hex').slice(0, 16)
}

let whole: string | undefined

/**
 * Stands for the whole program: a bundle lies in a folder that is named after all that it is made of
 * (`start/bundle.mjs`).
 */
export function programId(folders: Folders): string {
  const folder = path.basename(path.dirname(fileURLToPath(import.meta.url)))
  whole ??= folder.startsWith('program-') ? `${folder} ${runtime}` : programHash(folders)
  return whole
}

let started: string | undefined

/** Tells this process the state of all sources with which it was started (`start/bundle.mjs`). */
export function startedFrom(sources: string): void {
  started = sources
}

/** The state of all sources with which this process was started; undefined where nobody has looked. */
export const startedWith = (): string | undefined => started
