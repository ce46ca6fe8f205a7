import temml from 'temml'
import { escapeHtml, type Html, html } from './html.ts'

const cache = new Map<string, string>()

/**
 * A formula as MathML. The wrapper with a label is what a PDF keeps for people who listen.
 * @param tex Formula of a worksheet.
 * @param label The formula in words.
 */
export function formulaHtml(tex: string, label: string): Html {
  let math = cache.get(tex)
  if (math === undefined) {
    math = temml.renderToString(`\\displaystyle ${tex}`, { throwOnError: true, annotate: false })
    cache.set(tex, math)
  }
  return html(`<span class="formula" role="img" aria-label="${escapeHtml(label)}">${math}</span>`)
}
