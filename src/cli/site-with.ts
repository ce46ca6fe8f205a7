import type { Manual } from '../model/manual.ts'
import type { OutputFile } from '../model/output-file.ts'
import { keepDrawings } from '../render/drawings/drawings.ts'
import type { PrintedFiles } from '../render/site/papers.ts'
import { oneFileOf, siteOf } from '../render/site/site-files.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { Kept } from './kept-prints.ts'
import type { Folders } from './load/load-manual.ts'
import { loadMakings } from './site-files.ts'

const bytesOf = ({ data }: OutputFile): number => Buffer.byteLength(data)

/**
 * The site, and what lies beside its pages: the manual in one file, and what is printed, now or
 * earlier. The pages say how large these files are, and which of them are old.
 */
export async function siteWith(
  printed: readonly OutputFile[],
  { files, older }: Kept,
  manual: Manual,
  words: Words,
  folders: Folders,
): Promise<{ readonly site: readonly OutputFile[]; readonly beside: readonly OutputFile[] }> {
  const makings = await loadMakings(folders)
  const { insides, ...oneFile } = await oneFileOf(manual, words, makings)
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
