import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { zipSync } from 'fflate'
import type { Manual } from '../../../model/manual.ts'
import type { OutputFile } from '../../../model/output-file.ts'
import type { PageData, PageFont } from '../../../model/page-data.ts'
import type { SiteScripts } from '../../../render/assets.ts'
import type { PrintAssets } from '../../../render/print-view/print-view.ts'
import { workerFile } from '../../../render/site/kept-site.ts'
import {
  isKept,
  oneFileOf,
  type SiteFonts,
  type SiteMakings,
  siteOf,
} from '../../../render/site/site-files.ts'
import { tablesFolder } from '../../../render/tables/tables.ts'
import { workbookOf } from '../../../render/tables/workbook.ts'
import type { TemplateSet } from '../../../render/text/templates.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import { bytesOf, fromBytes } from './base64.ts'

/** What sites are made of in the page. */
export type Workshop = {
  readonly makings: SiteMakings
  readonly worker: string
  /** Script of documents that print themselves. */
  readonly layScript: string
}

function fontsOf(fonts: readonly PageFont[], licences: readonly OutputFile[]): SiteFonts {
  const rules = (url: (font: PageFont) => string): string =>
    fonts
      .flatMap((font) => font.faces.map((face) => face.rule.replace('{url}', url(font))))
      .join('\n')
  return {
    linked: rules(({ name }) => `fonts/${name}`),
    inline: rules(({ data }) => `data:font/woff2;base64,${data}`),
    files: [
      ...fonts.map(({ name, data }) => ({ path: `fonts/${name}`, data: bytesOf(data) })),
      ...licences,
    ],
  }
}

const digest = (data: string | Uint8Array): Uint8Array =>
  sha256(typeof data === 'string' ? utf8ToBytes(data) : data)

/**
 * What the page carries to make sites of; undefined where the program makes them.
 * @param templates Compiled, since a page may make no code of text.
 */
export function workshopOf(
  { fonts, makings }: PageData,
  templates: TemplateSet,
): Workshop | undefined {
  if (!makings) return undefined
  const { styles, scripts, worker, layScript, icons, licences } = makings
  const siteFonts = fontsOf(fonts, licences)
  return {
    worker,
    layScript,
    makings: {
      templates,
      styles,
      scripts: scripts as SiteScripts,
      icons: icons.map(({ path, data }) => ({ path, data: bytesOf(data) })),
      fonts: () => Promise.resolve(siteFonts),
      workbook: workbookOf,
      hash: (text) => fromBytes(digest(text)),
    },
  }
}

/** What documents that print themselves are made of. */
export async function printAssetsOf(
  { makings, layScript }: Workshop,
  words: Words,
): Promise<PrintAssets> {
  const { inline } = await makings.fonts([])
  return { ...makings, words, layScript, fontCss: inline }
}

const bytesIn = ({ data }: OutputFile): number =>
  typeof data === 'string' ? utf8ToBytes(data).length : data.length

/** A site as a folder: what the program writes below `site/` where it cannot print. */
export type MadeSite = {
  readonly files: readonly OutputFile[]
  /** The manual in one file, which lies among them too. */
  readonly oneFile: string
}

export async function makeSite(
  manual: Manual,
  words: Words,
  { makings, worker }: Workshop,
): Promise<MadeSite> {
  const { insides, ...oneFile } = await oneFileOf(manual, words, makings)
  const printed = new Map([[oneFile.path, { bytes: bytesIn(oneFile) }]])
  const site = await siteOf(manual, words, makings, printed, insides)
  const tables = site.filter(({ path }) => path.startsWith(`${tablesFolder}/`))
  const hash = (data: string | Uint8Array): string => bytesToHex(digest(data))
  const kept = workerFile(worker, site.filter(isKept), [oneFile, ...tables], hash)
  return { files: [...site, kept, oneFile], oneFile: String(oneFile.data) }
}

/**
 * Files as one archive, in a folder of their own.
 * @param date Of the manual, so that the same input gives the same bytes.
 */
export function zipped(files: readonly OutputFile[], folder: string, date: string): Uint8Array {
  const entries = files.map(({ path, data }): [string, Uint8Array] => [
    `${folder}/${path}`,
    typeof data === 'string' ? utf8ToBytes(data) : data,
  ])
  return zipSync(Object.fromEntries(entries), { mtime: new Date(`${date}T00:00:00`), level: 6 })
}
