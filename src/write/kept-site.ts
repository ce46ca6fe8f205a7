import { createHash } from 'node:crypto'
import type { KeptSite } from '../model/kept-site.ts'
import type { OutputFile } from './write-files.ts'

const sha256 = (data: string | Uint8Array): string =>
  createHash('sha256').update(data).digest('hex')

/** Of a hash this many digits tell two contents apart; the whole ones would be half of the list. */
const digits = 16

const hashes = (files: readonly OutputFile[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    files
      .map(({ path, data }): [string, string] => [path, sha256(data).slice(0, digits)])
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )

/**
 * The worker of a site with the list of what it keeps before its script.
 * @param script Reads `keptSite`.
 */
export function workerFile(
  script: string,
  site: readonly OutputFile[],
  papers: readonly OutputFile[],
): OutputFile {
  const kept = { files: hashes(site), papers: hashes(papers) }
  const whole: KeptSite = { version: sha256(JSON.stringify(kept)).slice(0, digits), ...kept }
  return { path: 'worker.js', data: `var keptSite=${JSON.stringify(whole)};\n${script}` }
}
