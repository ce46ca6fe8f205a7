import type { Manual } from '../model/manual.ts'
import { renderSite } from '../render/site/render-site.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { OutputFile } from '../write/write-files.ts'
import { loadFonts, loadTemplates } from './load/load-assets.ts'
import type { Folders } from './load/load-manual.ts'

/** Everything below `site/`: pages, style sheet, fonts. */
export async function siteFiles(manual: Manual, words: Words, folders: Folders): Promise<readonly OutputFile[]> {
  const [fonts, templates] = await Promise.all([loadFonts(), loadTemplates(folders)])
  const pages = renderSite(manual, { ...templates, words, fontCss: fonts.linked })
  return [...pages, ...fonts.files.map((f) => ({ path: `assets/${f.path}`, data: f.data }))]
}
