import { createHash } from 'node:crypto'
import { inScript } from '../../model/in-script.ts'
import { type PageData, type PageMakings, pageDataId } from '../../model/page-data.ts'
import { stylesOf } from '../../render/assets.ts'
import { icon } from '../../render/site/icon.ts'
import { sitePages } from '../../render/site/render-site.ts'
import { html } from '../../render/text/html.ts'
import { createTemplates, precompiled, type TemplateTexts } from '../../render/text/templates.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { loadMakings } from '../site-files.ts'
import { type Folders, loadManual } from './load-manual.ts'
import { loadLicences, loadPageFonts } from './load-page-fonts.ts'
import { loadPageLibrary } from './load-page-library.ts'
import { bundleScript, loadLayScript, loadWorker } from './load-scripts.ts'
import { loadTemplates } from './load-templates.ts'

/** A page, and what it may do: the same stands in it, and is sent before it where it is served. */
export type FormPage = { readonly html: string; readonly policy: string }

/** Templates as a script: a page may make no code of text. */
const templatesScript = (templates: TemplateTexts): string =>
  `var pageTemplates={${Object.entries(templates)
    .map(([name, text]) => `${JSON.stringify(name)}:${precompiled(text)}`)
    .join(',\n')}};`

const sha256 = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`

type Parts = {
  readonly words: Words
  readonly data: PageData
  readonly style: string
  /** Scripts in their order. */
  readonly scripts: readonly string[]
}

/**
 * What the page may do: run its own scripts, and ask the program behind it, where there is one. A
 * page alone shows the manual that it has made and documents that print themselves, for which its own
 * policy holds as well: their scripts are the same for every fair, their style cannot be known before.
 */
function policyOf({ data, style, scripts }: Parts): string {
  const isServed = data.kind === 'program'
  const { makings } = data
  const opened = [makings?.scripts['oneFile'], makings?.layScript].flatMap((text) => text ?? [])
  return [
    "default-src 'none'",
    `script-src ${[...scripts, ...opened].map(sha256).join(' ')}`,
    `style-src ${isServed ? sha256(style) : "'unsafe-inline'"}`,
    'font-src data:',
    'img-src data: blob:',
    ...(isServed ? ["connect-src 'self'"] : []),
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
}

function pageOf(parts: Parts, templates: TemplateTexts): FormPage {
  const policy = policyOf(parts)
  const { words, data, style, scripts } = parts
  const page = createTemplates(templates).render('form-page', {
    lang: 'en',
    title: words.maker.title,
    policy: html(policy),
    icon: `data:image/svg+xml,${icon.trim().replaceAll('#', '%23').replaceAll('"', "'")}`,
    style: html(style),
  })
  // Programs hold texts that no page may show, so they do not pass through the templates.
  const json = `<script type="application/json" id="${pageDataId}">${inScript(data)}</script>`
  const all = [json, ...scripts.map((script) => `<script>${script}</script>`)].join('\n')
  return { html: page.replace('</body>', () => `${all}\n</body>`), policy }
}

/** What both pages have in common: script, style, library. */
async function loadParts(folders: Folders) {
  const [{ checked, ...library }, { templates, styles }, script] = await Promise.all([
    loadPageLibrary(folders),
    loadTemplates(folders),
    bundleScript('form', folders),
  ])
  const own = Object.keys(styles).filter((name) => name.startsWith('form/'))
  const assets = { templates, styles, words: checked.words, fontCss: '' }
  const style = stylesOf(assets, 'shared', 'emergency', 'form-page', ...own)
  const scripts = [templatesScript(templates), script]
  return { words: checked.words, library, templates, styles, style, scripts }
}

/** The page that the program serves, on which a facility file is filled in. */
export async function loadFormPage(folders: Folders): Promise<FormPage> {
  const { words, library, templates, style, scripts } = await loadParts(folders)
  const fonts = await loadPageFonts([JSON.stringify(library)])
  const data: PageData = { kind: 'program', ...library, fonts }
  return pageOf({ words, data, style, scripts }, templates)
}

/** Facilities whose pages have every kind of formula and sign. */
const shown = ['larkmoor', 'ostmere', 'brambleford'] as const

/** The pages of a demo as one text. */
async function pagesOf(id: string, folders: Folders): Promise<string> {
  const folder = `${folders.content}/facilities/${id}`
  const [{ manual, library }, makings] = await Promise.all([
    loadManual(folder, folders, '2027-06-14'),
    loadMakings(folders),
  ])
  if (!manual || !library) throw new Error(`${id} has faults; npm run check lists them`)
  const assets = { ...makings, words: library.words, fontCss: '', keeps: true }
  return [...sitePages(manual, assets).values()].map((make) => make()).join('\n')
}

async function loadPageMakings(folders: Folders): Promise<PageMakings> {
  const [{ styles, scripts, icons }, worker, layScript, licences] = await Promise.all([
    loadMakings(folders),
    loadWorker(folders),
    loadLayScript(folders),
    loadLicences(),
  ])
  return {
    styles,
    scripts,
    worker,
    layScript,
    icons: icons.map(({ path, data }) => ({ path, data: Buffer.from(data).toString('base64') })),
    licences,
  }
}

/** The data of the page that stands alone. */
async function loadMakerData(folders: Folders): Promise<PageData> {
  const [{ library, sources }, makings, ...texts] = await Promise.all([
    loadPageLibrary(folders),
    loadPageMakings(folders),
    ...shown.map((id) => pagesOf(id, folders)),
  ])
  const fonts = await loadPageFonts([JSON.stringify(library), ...texts])
  return { kind: 'page', library, sources, fonts, makings }
}

/** The page that stands alone: it needs no program, and makes the manual itself. */
export async function loadMakerPage(folders: Folders): Promise<FormPage> {
  const [{ words, templates, style, scripts }, data] = await Promise.all([
    loadParts(folders),
    loadMakerData(folders),
  ])
  return pageOf({ words, data, style, scripts }, templates)
}
