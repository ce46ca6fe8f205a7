import { createHash } from 'node:crypto'
import type { Manual } from '../model/manual.ts'
import { oneFile, oneFilePage } from '../render/one-file/one-file.ts'
import { oneFileName, type PrintedFiles } from '../render/site/papers.ts'
import { renderSite, type SiteFile, sitePages, styleFile } from '../render/site/render-site.ts'
import { dataTables, tablesFolder, workbookPath } from '../render/tables/tables.ts'
import { workbookOf } from '../render/tables/workbook.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { OutputFile } from '../write/write-files.ts'
import { loadFonts } from './load/load-fonts.ts'
import { loadIcons } from './load/load-icons.ts'
import type { Folders } from './load/load-manual.ts'
import { loadScripts } from './load/load-scripts.ts'
import { loadTemplates } from './load/load-templates.ts'
import { siteFonts } from './load/site-fonts.ts'

/** Whether a phone keeps a file without being asked: spreadsheets are not looked for without signal. */
export const isKept = ({ path }: Pick<OutputFile, 'path'>): boolean =>
  !path.startsWith(`${tablesFolder}/`)

/** Puts the rules of the fonts at the head of the style sheet, which waits for what they hold. */
const withFonts = (files: readonly SiteFile[], rules: string): readonly SiteFile[] =>
  files.map((f) => (f.path === styleFile ? { ...f, data: `${rules}\n${f.data}` } : f))

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
  const [icons, templates, scripts, workbook] = await Promise.all([
    loadIcons(folders),
    loadTemplates(folders),
    loadScripts(folders),
    workbookOf(dataTables(manual, words)),
  ])
  const files = renderSite(
    manual,
    { ...templates, scripts, words, fontCss: '', keeps: true },
    printed,
  )
  const fonts = await siteFonts(files.map(({ data }) => data))
  const beside = [...fonts.files, ...icons].map((f) => ({ path: `assets/${f.path}`, data: f.data }))
  return [...withFonts(files, fonts.linked), ...beside, { path: workbookPath, data: workbook }]
}

/** The manual in one file. */
export async function oneFileOf(
  manual: Manual,
  words: Words,
  folders: Folders,
): Promise<OutputFile> {
  const [templates, scripts] = await Promise.all([loadTemplates(folders), loadScripts(folders)])
  const assets = { ...templates, scripts, words, fontCss: '', keeps: false }
  const made = oneFile(manual, assets)
  const { inline } = await siteFonts([made.body, ...made.scripts])
  const hash = (text: string): string => createHash('sha256').update(text).digest('base64')
  return { path: oneFileName, data: oneFilePage(made, assets, { fontCss: inline, hash }) }
}

/** Everything below `site/`, with each page made when it is first asked for: what the preview shows. */
export async function siteOnDemand(
  manual: Manual,
  words: Words,
  folders: Folders,
): Promise<ReadonlyMap<string, () => string | Uint8Array>> {
  const [fonts, icons, templates, scripts, workbook] = await Promise.all([
    loadFonts(),
    loadIcons(folders),
    loadTemplates(folders),
    loadScripts(folders),
    workbookOf(dataTables(manual, words)),
  ])
  const made = new Map<string, string>()
  const once = (path: string, make: () => string) => (): string => {
    const page = made.get(path) ?? make()
    made.set(path, page)
    return page
  }
  const assets = { ...templates, scripts, words, fontCss: fonts.linked, keeps: false }
  const pages = [...sitePages(manual, assets)].map(([path, make]): [string, () => string] => [
    path,
    once(path, make),
  ])
  return new Map<string, () => string | Uint8Array>([
    ...pages,
    [workbookPath, () => workbook],
    ...[...fonts.files, ...icons].map((f): [string, () => Uint8Array] => [
      `assets/${f.path}`,
      () => f.data,
    ]),
  ])
}
