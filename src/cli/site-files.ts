import { createHash } from 'node:crypto'
import type { Manual } from '../model/manual.ts'
import { keepDrawings } from '../render/drawings/drawings.ts'
import { sitePages } from '../render/site/render-site.ts'
import type { SiteMakings } from '../render/site/site-files.ts'
import { type DataTable, dataTables, workbookPath } from '../render/tables/tables.ts'
import { workbookOf } from '../render/tables/workbook.ts'
import type { Words } from '../validate/schemas/words.ts'
import { keptOr } from './kept/kept-results.ts'
import { loadFonts } from './load/load-fonts.ts'
import { loadIcons } from './load/load-icons.ts'
import type { Folders } from './load/load-manual.ts'
import { loadScripts } from './load/load-scripts.ts'
import { loadTemplates } from './load/load-templates.ts'
import { siteFonts } from './load/site-fonts.ts'
import type { FileMaker } from './preview/answer.ts'

const workbook = (tables: readonly DataTable[]): Promise<Uint8Array> =>
  keptOr('workbook', [JSON.stringify(tables)], () => workbookOf(tables))

/** What sites are made of, from the project's folders. */
export async function loadMakings(folders: Folders): Promise<SiteMakings> {
  const [icons, templates, scripts] = await Promise.all([
    loadIcons(folders),
    loadTemplates(folders),
    loadScripts(folders),
  ])
  const hash = (text: string): string => createHash('sha256').update(text).digest('base64')
  return { ...templates, icons, scripts, fonts: siteFonts, workbook, hash }
}

/** Everything below `site/`, with each page made when it is first asked for: what the preview shows. */
export async function siteOnDemand(
  manual: Manual,
  words: Words,
  folders: Folders,
): Promise<ReadonlyMap<string, FileMaker>> {
  const [fonts, icons, templates, scripts] = await Promise.all([
    loadFonts(),
    loadIcons(folders),
    loadTemplates(folders),
    loadScripts(folders),
  ])
  const made = new Map<string, string>()
  const once = (path: string, make: () => string) => (): string => {
    const known = made.get(path)
    if (known !== undefined) return known
    const page = make()
    made.set(path, page)
    keepDrawings(manual)
    return page
  }
  const assets = { ...templates, scripts, words, fontCss: fonts.linked, keeps: false }
  const pages = [...sitePages(manual, assets)].map(([path, make]): [string, () => string] => [
    path,
    once(path, make),
  ])
  return new Map<string, FileMaker>([
    ...pages,
    [workbookPath, () => workbook(dataTables(manual, words))],
    ...[...fonts.files, ...icons].map((f): [string, () => Uint8Array] => [
      `assets/${f.path}`,
      () => f.data,
    ]),
  ])
}
