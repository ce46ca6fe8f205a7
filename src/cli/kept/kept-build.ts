import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import type { Problem } from '../../model/problem.ts'
import type { Built } from '../build-summary.ts'
import type { BuildAsked } from './build-inputs.ts'

/** What a finished build leaves behind, to be known again. */
export type KeptBuild = {
  /** Hash of all that went in. */
  readonly inputs: string
  /** The folder that was written. */
  readonly target: string
  /** Hash of the record of the build, which holds the hashes of all other files. */
  readonly record: string
  /** The browser that printed, as it is named, and what its file looks like where it has one. */
  readonly browser: { readonly name: string; readonly state: string }
  readonly problems: readonly Problem[]
  readonly built: Omit<Built, 'folder' | 'seconds'>
}

const sha256 = (data: string | Uint8Array): string =>
  createHash('sha256').update(data).digest('hex')

/** What a browser's file looks like: one that has been renewed may print otherwise. */
function stateOf(name: string): string {
  const file = statSync(name, { throwIfNoEntry: false })
  return file ? `${file.mtimeMs} ${file.size}` : ''
}

/** One file for each facility and place that it is built into; it goes when old prints go. */
const placeOf = (cache: string, { facility, dist }: BuildAsked): string =>
  path.join(cache, 'prints', 'builds', `${sha256(`${facility}\0${dist}`).slice(0, 32)}.json`)

type Recorded = { readonly files: readonly { readonly path: string; readonly sha256: string }[] }

/** Whether a folder holds what its record says; what else lies there is left there by every build. */
function isWhole({ target, record }: KeptBuild): boolean {
  const text = readFileSync(path.join(target, 'build.json'))
  if (sha256(text) !== record) return false
  const { files } = JSON.parse(text.toString('utf8')) as Recorded
  return files.every((f) => sha256(readFileSync(path.join(target, f.path))) === f.sha256)
}

/**
 * The last build of a facility where nothing that it depends on has changed since, and its output
 * still is what it wrote, byte by byte.
 */
export function unchangedBuild(
  cache: string,
  asked: BuildAsked,
  inputs: string,
): KeptBuild | undefined {
  try {
    const kept = JSON.parse(readFileSync(placeOf(cache, asked), 'utf8')) as KeptBuild
    const { name, state } = kept.browser
    return kept.inputs === inputs && stateOf(name) === state && isWhole(kept) ? kept : undefined
  } catch {
    // No build before this one, or something of it is gone.
    return undefined
  }
}

/** Notes a finished build. Where that cannot be written, the next one does all of its work. */
export function keepBuild(
  cache: string,
  asked: BuildAsked,
  build: Omit<KeptBuild, 'record' | 'browser'> & { readonly browser: string },
): void {
  try {
    const record = sha256(readFileSync(path.join(build.target, 'build.json')))
    const browser = { name: build.browser, state: stateOf(build.browser) }
    const place = placeOf(cache, asked)
    mkdirSync(path.dirname(place), { recursive: true })
    const own = `${place}.${process.pid}`
    writeFileSync(own, JSON.stringify({ ...build, record, browser }))
    renameSync(own, place)
  } catch {
    return
  }
}
