import type { Folders } from '../../src/cli/load/load-manual.ts'
import { loadMakings } from '../../src/cli/site-files.ts'
import type { Manual } from '../../src/model/manual.ts'
import type { OutputFile } from '../../src/model/output-file.ts'
import type { PrintedFiles } from '../../src/render/site/papers.ts'
import { siteOf } from '../../src/render/site/site-files.ts'
import type { Words } from '../../src/validate/schemas/words.ts'

/**
 * Everything below `site/`.
 * @param printed The printed files that will lie beside the pages.
 */
export const siteFiles = async (
  manual: Manual,
  words: Words,
  folders: Folders,
  printed: PrintedFiles,
): Promise<readonly OutputFile[]> => siteOf(manual, words, await loadMakings(folders), printed)
