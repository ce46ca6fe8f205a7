import type { Manual } from '../model/manual.ts'
import type { PrintedFiles } from '../render/site/papers.ts'
import { renderSite, sitePages } from '../render/site/render-site.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { OutputFile } from '../write/write-files.ts'
import { loadFonts } from './load/load-fonts.ts'
import type { Folders } from './load/load-manual.ts'
import { loadScripts } from './load/load-scripts.ts'
import { loadTemplates } from './load/load-templates.ts'

/**
 * Everything below `site/`: pages, style sheet, fonts.
 * @param printed The printed files that will lie beside the pages.
 */
export async function siteFiles(
  manual: Manual,
  words: Words,
  folders: Folders,
  printed: PrintedFiles,
): Promise<readonly OutputFile[]> {
  const [fonts, templates, scripts] = await Promise.all([
    loadFonts(),
    loadTemplates(folders),
    loadScripts(folders),
  ])
  const pages = renderSite(manual, { ...templates, scripts, words, fontCss: fonts.linked }, printed)
  return [...pages, ...fonts.files.map((f) => ({ path: `assets/${f.path}`, data: f.data }))]
}

/** The same, with each page made when it is first asked for: what the preview shows. */
export async function siteOnDemand(
  manual: Manual,
  words: Words,
  folders: Folders,
): Promise<ReadonlyMap<string, () => string | Uint8Array>> {
  const [fonts, templates, scripts] = await Promise.all([
    loadFonts(),
    loadTemplates(folders),
    loadScripts(folders),
  ])
  const made = new Map<string, string>()
  const once = (path: string, make: () => string) => (): string => {
    const page = made.get(path) ?? make()
    made.set(path, page)
    return page
  }
  const pages = [...sitePages(manual, { ...templates, scripts, words, fontCss: fonts.linked })].map(
    ([path, make]): [string, () => string] => [path, once(path, make)],
  )
  return new Map<string, () => string | Uint8Array>([
    ...pages,
    ...fonts.files.map((f): [string, () => Uint8Array] => [`assets/${f.path}`, () => f.data]),
  ])
}
