import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import type { RenderAssets } from '../../render/assets.ts'
import type { TemplateTexts } from '../../render/text/templates.ts'
import type { Folders } from './load-manual.ts'
import { withSlashes } from './shown-path.ts'

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
): Promise<{ readonly templates: TemplateTexts } & Pick<RenderAssets, 'styles'>> {
  const names = readdirSync(folders.templates, { recursive: true, encoding: 'utf8' })
    .map((n) => withSlashes(n))
    .sort()
  const read = (ending: string): [string, string][] =>
    names
      .filter((n) => n.endsWith(ending))
      .map((n) => [
        n.slice(0, -ending.length),
        readFileSync(path.join(folders.templates, n), 'utf8'),
      ])
  const styles = Object.fromEntries(
    read('.css').map(([n, text]) => [n.replace('styles/', ''), text]),
  )
  return {
    templates: Object.fromEntries(read('.hbs')),
    styles: Object.fromEntries(
      Object.entries(styles).map(([n, text]) => [n, withImports(text, styles)]),
    ),
  }
}
