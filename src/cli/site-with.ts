import type { Manual } from '../model/manual.ts'
import type { OutputFile } from '../model/output-file.ts'
import { stepByStep } from '../print/in-turn.ts'
import { keepDrawings } from '../render/drawings/drawings.ts'
import type { PrintedFiles } from '../render/site/papers.ts'
import { type OneFileMade, oneFileOf, type SiteMakings, siteOf } from '../render/site/site-files.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { Kept } from './kept-prints.ts'
import type { Folders } from './load/load-manual.ts'
import { loadMakings } from './site-files.ts'

const bytesOf = ({ data }: OutputFile): number => Buffer.byteLength(data)

/** The manual in one file, with what the site is made of beside it. */
export type OneFileFirst = { readonly makings: SiteMakings; readonly oneFile: OneFileMade }

/** Makes the manual in one file page by page, with other work between: a browser prints meanwhile. */
export async function oneFileFirst(
  manual: Manual,
  words: Words,
  folders: Folders,
): Promise<OneFileFirst> {
  const makings = await loadMakings(folders)
  return { makings, oneFile: await oneFileOf(manual, words, makings, stepByStep) }
}

/**
 * The site, and what lies beside its pages: the manual in one file, and what is printed, now or
 * earlier. The pages say how large these files are, and which of them are old.
 */
export async function siteWith(
  printed: readonly OutputFile[],
  { files, older }: Kept,
  manual: Manual,
  words: Words,
  { makings, oneFile: { insides, ...oneFile } }: OneFileFirst,
): Promise<{ readonly site: readonly OutputFile[]; readonly beside: readonly OutputFile[] }> {
  const earlier = files
    .filter(({ path }) => path.startsWith('site/'))
    .map((f) => ({ ...f, path: f.path.slice('site/'.length) }))
  const sizes: PrintedFiles = new Map([
    ...[oneFile, ...printed].map((f) => [f.path, { bytes: bytesOf(f) }] as const),
    ...earlier.map((f) => [f.path, { bytes: bytesOf(f), older }] as const),
  ])
  const site = await siteOf(manual, words, makings, sizes, insides)
  keepDrawings(manual)
  return { site, beside: [oneFile, ...printed, ...earlier] }
}
