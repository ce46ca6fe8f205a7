import type { KeptSite } from '../../model/kept-site.ts'
import type { OutputFile } from '../../model/output-file.ts'

/** Of a hash this many digits tell two contents apart; the whole ones would be half of the list. */
const digits = 16

/** SHA-256 of a file, in hex. */
export type Hash = (data: string | Uint8Array) => string

const hashes = (files: readonly OutputFile[], hash: Hash): Readonly<Record<string, string>> =>
  Object.fromEntries(
    files
      .map(({ path, data }): [string, string] => [path, hash(data).slice(0, digits)])
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
  hash: Hash,
): OutputFile {
  const kept = { files: hashes(site, hash), papers: hashes(papers, hash) }
  const whole: KeptSite = { version: hash(JSON.stringify(kept)).slice(0, digits), ...kept }
  return { path: 'worker.js', data: `var keptSite=${JSON.stringify(whole)};\n${script}` }
}
