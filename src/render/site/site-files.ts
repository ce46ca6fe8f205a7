import type { Manual } from '../../model/manual.ts'
import type { OutputFile } from '../../model/output-file.ts'
import { atOnce, type Steps } from '../../model/steps.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { SiteScripts } from '../assets.ts'
import { oneFilePage, renderingOneFile } from '../one-file/one-file.ts'
import { type DataTable, dataTables, tablesFolder, workbookPath } from '../tables/tables.ts'
import type { TemplateSet } from '../text/templates.ts'
import { oneFileName, type PrintedFiles } from './papers.ts'
import { type InsidesAlone, renderSite, styleFile } from './render-site.ts'

/** The fonts of one site. */
export type SiteFonts = {
  /** Rules that name files below `fonts/`. */
  readonly linked: string
  /** Rules with the fonts inside, for a file that stands alone; nothing that it can do without. */
  readonly inline: string
  /** The fonts with their licences, by their path below the assets. */
  readonly files: readonly OutputFile[]
}

/** What sites are made of beside their manual. */
export type SiteMakings = {
  readonly templates: TemplateSet
  /** Style sheets by name. */
  readonly styles: Readonly<Record<string, string>>
  readonly scripts: SiteScripts
  readonly icons: readonly OutputFile[]
  /** Fonts for what the texts of a site show. */
  readonly fonts: (texts: readonly string[]) => Promise<SiteFonts>
  /** Tables as one workbook. */
  readonly workbook: (tables: readonly DataTable[]) => Promise<Uint8Array>
  /** SHA-256 in Base64, by which a policy names a style or script. */
  readonly hash: (text: string) => string
}

/** Whether a phone keeps a file without being asked: spreadsheets are not looked for without signal. */
export const isKept = ({ path }: Pick<OutputFile, 'path'>): boolean =>
  !path.startsWith(`${tablesFolder}/`)

/**
 * Everything below `site/`: pages, style sheet, fonts.
 * @param printed The printed files that will lie beside the pages.
 * @param made Insides of pages that were made for the manual in one file.
 */
export async function siteOf(
  manual: Manual,
  words: Words,
  makings: SiteMakings,
  printed: PrintedFiles,
  made?: InsidesAlone,
): Promise<readonly OutputFile[]> {
  const assets = { ...makings, words, fontCss: '', keeps: true }
  const files = renderSite(manual, assets, printed, made)
  const fonts = await makings.fonts(files.map(({ data }) => data))
  const beside = [...fonts.files, ...makings.icons]
  return [
    // The rules of the fonts at the head of the style sheet wait for what the pages hold.
    ...files.map((f) => (f.path === styleFile ? { ...f, data: `${fonts.linked}\n${f.data}` } : f)),
    ...beside.map((f) => ({ path: `assets/${f.path}`, data: f.data })),
    { path: workbookPath, data: await makings.workbook(dataTables(manual, words)) },
  ]
}

/** The manual in one file, with the insides of its pages. */
export type OneFileMade = OutputFile & { readonly insides: InsidesAlone }

/** @param work Does the steps in which the file is rendered: all at once, or with other work between. */
export async function oneFileOf(
  manual: Manual,
  words: Words,
  makings: SiteMakings,
  work: <T>(steps: Steps<T>) => T | Promise<T> = atOnce,
): Promise<OneFileMade> {
  const assets = { ...makings, words, fontCss: '', keeps: false }
  const made = await work(renderingOneFile(manual, assets))
  const { inline } = await makings.fonts([
    made.body,
    ...made.data.map(({ json }) => json),
    made.script,
  ])
  const data = oneFilePage(made, assets, { fontCss: inline, hash: makings.hash })
  return { path: oneFileName, data, insides: made.insides }
}
