import { createHash } from 'node:crypto'
import type { OutputFile } from '../model/output-file.ts'

/** Of a file, in hex. */
export const sha256 = (data: string | Uint8Array): string =>
  createHash('sha256').update(data).digest('hex')

/** A file as it is written. */
export type HashedFile = {
  readonly path: string
  readonly data: Uint8Array
  readonly sha256: string
}

/**
 * Makes bytes with their hash of the data of files, once of each, however often it lies in the output
 * and whoever asks.
 */
export function hashedOnce(): (data: OutputFile['data']) => Omit<HashedFile, 'path'> {
  const known = new Map<OutputFile['data'], Omit<HashedFile, 'path'>>()
  return (data) => {
    const before = known.get(data)
    if (before) return before
    const bytes = typeof data === 'string' ? Buffer.from(data) : data
    const hashed = { data: bytes, sha256: sha256(bytes) }
    known.set(data, hashed)
    return hashed
  }
}

/**
 * One hash over many files: any change of a name or a text changes it, the order of reading does
 * not.
 */
export function hashOf(files: readonly { readonly path: string; readonly text: string }[]): string {
  const hash = createHash('sha256')
  for (const f of [...files].sort((a, b) => a.path.localeCompare(b.path, 'en')))
    hash.update(`${f.path}\0${f.text.length}\0${f.text}\0`)
  return hash.digest('hex')
}

export type BuildCounts = {
  readonly pages: number
  readonly figures: number
  readonly estimates: number
  readonly findings: number
  readonly worksheets: number
  readonly procedures: number
}

/** `build.json`: what went in and what came out. */
export function buildRecord(input: {
  readonly facility: string
  readonly date: string
  readonly toolVersion: string
  readonly browser: string
  readonly contentHash: string
  readonly facilityHash: string
  readonly counts: BuildCounts
  /** What the next build has to know of the binder. */
  readonly binder: object | undefined
  /** Pages and legibility of posted sheets. */
  readonly sheets: readonly object[] | undefined
  /** Pages of the field book. */
  readonly fieldBook: { readonly pages: number } | undefined
  /** The revision of an earlier build, whose printed files have stayed. */
  readonly older: { readonly revision: string; readonly date: string } | undefined
  readonly files: readonly HashedFile[]
}): string {
  const { files, counts, binder, sheets, fieldBook, older, ...went } = input
  const out = [...files]
    .sort((a, b) => a.path.localeCompare(b.path, 'en'))
    .map((f) => ({ path: f.path, bytes: f.data.length, sha256: f.sha256 }))
  return `${JSON.stringify({ format: 'ovalkeep-build', version: 1, ...went, counts, binder, sheets, fieldBook, older, files: out }, null, 1)}\n`
}
