import { readdir, readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import type { RenderAssets } from '../../render/assets.ts'
import type { Folders } from './load-manual.ts'
import { withSlashes } from './shown-path.ts'

const require = createRequire(import.meta.url)

type Face = {
  readonly family: string
  readonly weight: number
  readonly style: 'normal' | 'italic'
  readonly pkg: string
  readonly file: string
}

const face = (
  family: string,
  pkg: string,
  weight: number,
  style: Face['style'] = 'normal',
): Face => ({
  family,
  weight,
  style,
  pkg: `@fontsource/${pkg}`,
  file: `${pkg}-latin-${weight}-${style}.woff2`,
})

/**
 * One type family for text, one for titles and large numbers, one for formulas; all under the SIL
 * Open Font License.
 */
const faces: readonly Face[] = [
  face('Source Sans 3', 'source-sans-3', 400),
  face('Source Sans 3', 'source-sans-3', 400, 'italic'),
  face('Source Sans 3', 'source-sans-3', 600),
  face('Source Sans 3', 'source-sans-3', 700),
  face('Barlow Condensed', 'barlow-condensed', 600),
  face('STIX Two Math', 'stix-two-math', 400),
]

const folderOf = (pkg: string): string => path.dirname(require.resolve(`${pkg}/package.json`))

const rule = (f: Face, url: string): string =>
  `@font-face{font-family:"${f.family}";font-weight:${f.weight};font-style:${f.style};font-display:block;src:url(${url}) format("woff2")}`

export type Fonts = {
  /** Rules with the fonts inside, for printing. */
  readonly inline: string
  /** Rules that name files below `fonts/`, for the site. */
  readonly linked: string
  readonly files: readonly { readonly path: string; readonly data: Uint8Array }[]
}

let fonts: Promise<Fonts> | undefined

/** The fonts of the project and their licences; read once. */
export function loadFonts(): Promise<Fonts> {
  fonts ??= (async () => {
    const read = await Promise.all(
      faces.map(async (f) => ({
        f,
        data: await readFile(path.join(folderOf(f.pkg), 'files', f.file)),
      })),
    )
    const licences = await Promise.all(
      [...new Set(faces.map((f) => f.pkg))].map(async (pkg) => ({
        path: `fonts/${pkg.split('/')[1]}-LICENSE.txt`,
        data: new Uint8Array(await readFile(path.join(folderOf(pkg), 'LICENSE'))),
      })),
    )
    return {
      inline: read
        .map(({ f, data }) => rule(f, `data:font/woff2;base64,${data.toString('base64')}`))
        .join('\n'),
      linked: faces.map((f) => rule(f, `fonts/${f.file}`)).join('\n'),
      files: [
        ...read.map(({ f, data }) => ({ path: `fonts/${f.file}`, data: new Uint8Array(data) })),
        ...licences,
      ],
    }
  })()
  return fonts
}

/** A style sheet with those in place that it imports by their path below `templates/styles/`. */
const withImports = (text: string, styles: Readonly<Record<string, string>>): string =>
  text.replace(/@import "([^"]+)\.css";\n/g, (_, name: string) => {
    const style = styles[name]
    if (style === undefined) throw new Error(`there is no style sheet ${name}.css`)
    return style
  })

/** Reads templates and style sheets; called again by the preview whenever one changes. */
export async function loadTemplates(
  folders: Folders,
): Promise<Pick<RenderAssets, 'templates' | 'styles'>> {
  const names = (await readdir(folders.templates, { recursive: true }))
    .map((n) => withSlashes(n))
    .sort()
  const read = async (ending: string): Promise<[string, string][]> =>
    Promise.all(
      names
        .filter((n) => n.endsWith(ending))
        .map(
          async (n): Promise<[string, string]> => [
            n.slice(0, -ending.length),
            await readFile(path.join(folders.templates, n), 'utf8'),
          ],
        ),
    )
  const styles = Object.fromEntries(
    (await read('.css')).map(([n, text]) => [n.replace('styles/', ''), text]),
  )
  return {
    templates: Object.fromEntries(await read('.hbs')),
    styles: Object.fromEntries(
      Object.entries(styles).map(([n, text]) => [n, withImports(text, styles)]),
    ),
  }
}
