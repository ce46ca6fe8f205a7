import { inScript } from '../../model/in-script.ts'
import type { Manual } from '../../model/manual.ts'
import { type PrintWork, printPlaces, printWorkId } from '../../model/print-view.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'

/** What documents that print themselves are made of. */
export type PrintAssets = RenderAssets & {
  /** The script that lays them out, whole in one text. */
  readonly layScript: string
  /** SHA-256 in Base64, by which a policy names a script. */
  readonly hash: (text: string) => string
}

/** What is printed, and how it looks. */
export type ToPrint = {
  readonly title: string
  /** How it is printed: which sides, which way leaves are turned. */
  readonly advice: readonly string[]
  readonly work: PrintWork
  /** Whether page numbers and heads stand in margins, which not every browser prints. */
  readonly hasMargins: boolean
  /** Class of the body. */
  readonly look: string
  /** Style on paper, and while it is laid out. */
  readonly css: { readonly paper: string; readonly laying: string }
}

/**
 * A document that lays itself out and asks its browser to print it; it asks nobody for anything.
 */
export function printView(print: ToPrint, manual: Manual, assets: PrintAssets): string {
  const { words, fontCss, layScript, hash } = assets
  const policy = [
    "default-src 'none'",
    `script-src 'sha256-${hash(layScript)}'`,
    "style-src 'unsafe-inline'",
    'font-src data:',
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  const page = createTemplates(assets.templates).render('print-view', {
    words,
    places: printPlaces,
    lang: manual.facility.lang,
    policy: html(policy),
    look: print.look,
    title: `${manual.facility.name}: ${print.title}`,
    advice: print.advice,
    hasMargins: print.hasMargins,
    fonts: html(fontCss),
    paper: html(print.css.paper),
    laying: html(print.css.laying),
    own: html(stylesOf(assets, 'print-view')),
  })
  const says = {
    laying: words.printing.laying,
    done: words.printing.done,
    fault: words.printing.fault,
  }
  const data = inScript({ work: print.work, says })
  const scripts = `<script type="application/json" id="${printWorkId}">${data}</script>\n<script>${layScript}</script>`
  return page.replace('</body>', () => `${scripts}\n</body>`)
}
