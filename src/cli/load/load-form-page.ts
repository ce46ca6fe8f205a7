import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { type PageData, type PageFont, pageDataId } from '../../model/page-data.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import { stylesOf } from '../../render/assets.ts'
import { icon } from '../../render/site/icon.ts'
import { html } from '../../render/text/html.ts'
import { createTemplates } from '../../render/text/templates.ts'
import { checkLibrary, type Library } from '../../validate/check-library.ts'
import { siteFaces } from './faces.ts'
import { locate } from './load-fonts.ts'
import { loadLibrary, loadSources } from './load-library.ts'
import type { Folders } from './load-manual.ts'
import { bundleScript } from './load-scripts.ts'
import { loadTemplates } from './load-templates.ts'

const fileOf = ({ file, data }: SourceTree) => ({ path: file.path, data })

const isList = (trees: SourceTree | readonly SourceTree[]): trees is readonly SourceTree[] =>
  Array.isArray(trees)

/** The faces that pages are set in. */
const loadPageFonts = (): Promise<readonly PageFont[]> =>
  Promise.all(
    [...siteFaces.text, siteFaces.titles].map(async (face) => ({
      family: face.family,
      weight: face.weight,
      data: (await readFile(locate(face))).toString('base64'),
    })),
  )

/**
 * The library as it was read, with what was checked of it.
 * @throws Error when it has faults: `check` lists them.
 */
async function loadData(folders: Folders) {
  const [read, sources, fonts] = await Promise.all([
    loadLibrary(folders.content, folders.shared),
    loadSources(folders.shared),
    loadPageFonts(),
  ])
  const checked = read.value && checkLibrary(read.value, new Set(sources.map((s) => s.id)))
  if (!read.value || !checked?.value || [...read.problems, ...checked.problems].length > 0)
    throw new Error('the library has faults; npm run check lists them')
  const library = Object.fromEntries(
    Object.entries(read.value).map(
      ([part, trees]: [string, SourceTree | readonly SourceTree[]]) => [
        part,
        isList(trees) ? trees.map(fileOf) : fileOf(trees),
      ],
    ),
  )
  return { library: checked.value, data: { library, sources, fonts } }
}

/** No text in it may end the script that it stands in. */
const inScript = (data: unknown): string => JSON.stringify(data).replaceAll('<', '\\u003c')

const sha256 = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`

type Parts = {
  readonly library: Library
  readonly data: PageData
  readonly style: string
  /** Scripts in their order. */
  readonly scripts: readonly string[]
}

/** What the page may do: run its own scripts, and ask the program behind it, where there is one. */
function policyOf({ data, style, scripts }: Parts): string {
  const isServed = data.kind === 'program'
  return [
    "default-src 'none'",
    `script-src ${scripts.map(sha256).join(' ')}`,
    `style-src ${isServed ? sha256(style) : "'unsafe-inline'"}`,
    'font-src data:',
    'img-src data: blob:',
    ...(isServed ? ["connect-src 'self'"] : []),
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
}

function pageOf(
  parts: Parts,
  templates: Readonly<Record<string, string>>,
): { readonly html: string; readonly policy: string } {
  const policy = policyOf(parts)
  const { library, data, style, scripts } = parts
  const page = createTemplates(templates).render('form-page', {
    lang: 'en',
    title: library.words.maker.title,
    policy: html(policy),
    icon: `data:image/svg+xml,${icon.trim().replaceAll('#', '%23').replaceAll('"', "'")}`,
    style: html(style),
    dataId: pageDataId,
    data: html(inScript(data)),
    scripts: scripts.map((script) => html(script)),
  })
  return { html: page, policy }
}

/** Style sheets of the form: those of its own below `templates/form/`. */
const formStyles = (styles: Readonly<Record<string, string>>): readonly string[] =>
  Object.keys(styles).filter((name) => name.startsWith('form/'))

/** The page on which a facility file is filled in, with all that it needs. */
export async function loadFormPage(
  folders: Folders,
): Promise<{ readonly html: string; readonly policy: string }> {
  const [{ library, data }, { templates, styles }, script] = await Promise.all([
    loadData(folders),
    loadTemplates(folders),
    bundleScript('form', folders),
  ])
  const assets = { templates, styles, words: library.words, fontCss: '' }
  const style = stylesOf(assets, 'shared', 'emergency', 'form-page', ...formStyles(styles))
  return pageOf(
    { library, data: { kind: 'program', ...data }, style, scripts: [script] },
    templates,
  )
}
