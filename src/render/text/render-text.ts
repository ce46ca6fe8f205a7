import { defaultSchema } from 'hast-util-sanitize'
import type { Link, PhrasingContent, Root, Text } from 'mdast'
import remarkHtml from 'remark-html'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import type { NamedQuantity } from '../../model/manual/named-quantity.ts'
import { placeholder } from '../../model/placeholders.ts'
import { rememberOf } from '../../model/remembered.ts'
import { escapeHtml } from './escape-html.ts'
import { type Html, html } from './html.ts'
import { quantityHtml } from './number-html.ts'

/** What a text may name, and where its links lead on the medium at hand. */
export type TextContext = {
  readonly quantities: Readonly<Record<string, NamedQuantity>>
  /** Link to a worksheet by id; undefined where the medium has no links. */
  readonly worksheetHref: (id: string) => string | undefined
  /** Link to a procedure by id; undefined where it is not part of this manual. */
  readonly procedureHref: (id: string) => string | undefined
  /**
   * Where a procedure is found, as HTML, for a medium whose links cannot be touched; it stands
   * behind their words.
   */
  readonly procedureNumber?: (id: string) => string | undefined
  /** Names that a page can work out anew: their places are marked. */
  readonly live?: ReadonlySet<string>
  readonly cache: Map<string, string>
}

/**
 * Stands for a quantity until the sanitiser is done: private-use characters cannot come from an
 * author's text unseen.
 */
const mark = (name: string): string => `\ue000${name}\ue001`
const marks = /\ue000([a-z0-9.-]+)\ue001/g

/** Any element or link target that is not on this list is dropped by the sanitiser. */
const schema = {
  ...defaultSchema,
  tagNames: ['p', 'strong', 'em', 'ol', 'ul', 'li', 'a', 'code', 'blockquote', 'br'],
  attributes: { a: ['href'] },
  protocols: { href: ['procedure'] },
}

function namesToMarks() {
  return (tree: Root): void => {
    visit(tree, 'text', (node: Text) => {
      node.value = node.value
        .replace(/[\ue000\ue001]/g, '')
        .replace(placeholder, (_, name: string) => mark(name))
    })
    // A reader cannot follow a link to anything but a procedure, so the words alone stay of any
    // other.
    visit(tree, 'link', (node: Link, index, parent) => {
      if (node.url.startsWith('procedure:') || !parent || index === undefined) return
      ;(parent.children as PhrasingContent[]).splice(index, 1, ...node.children)
    })
  }
}

const processor = unified()
  .use(remarkParse)
  .use(namesToMarks)
  .use(remarkHtml, { sanitize: schema })
  .freeze()

/** A quantity in running text. What has no value says so, and why. */
function quantitySpan(q: NamedQuantity | undefined, name: string, context: TextContext): string {
  if (!q) throw new RangeError(`text names ${name}, which the manual does not hold`)
  const href = q.worksheet && context.worksheetHref(q.worksheet.id)
  const kind = q.ok ? (q.estimate ? 'q estimate' : 'q') : 'q unknown'
  const title = q.ok ? '' : ` title="${escapeHtml(q.reason)}"`
  const live = context.live?.has(name) ? ` data-q="${name}"` : ''
  return href === undefined
    ? `<span class="${kind}"${title}${live}>${quantityHtml(q.text)}</span>`
    : `<a class="${kind}" href="${href}"${title}${live}>${quantityHtml(q.text)}</a>`
}

function finish(rendered: string, context: TextContext): string {
  return rendered
    .replace(/<a href="procedure:([a-z0-9-]+)">(.*?)<\/a>/gs, (_, id: string, words: string) => {
      const href = context.procedureHref(id)
      const number = context.procedureNumber?.(id)
      const linked = href === undefined ? words : `<a href="${href}">${words}</a>`
      return number === undefined ? linked : `${linked} (${number})`
    })
    .replace(marks, (_, name: string) => quantitySpan(context.quantities[name], name, context))
}

/**
 * A line in which nothing can mean anything to Markdown: it begins with a letter, a figure in braces,
 * a bracket or a quotation mark, and holds none of the signs that mark up.
 */
const plainLine =
  /^[\p{L}{("“'](?:[^*_[\]<>&\\`\n\r\t\ue000\ue001]*[^*_[\]<>&\\`\s\ue000\ue001])?$/u

/** As the parser would write such a line, which most are and which it takes long over. */
const asParagraph = (text: string): string =>
  `<p>${text.replace(placeholder, (_, name: string) => mark(name))}</p>`

const parsed = rememberOf('texts', (text) => String(processor.processSync(text)).trim())

/** What a text is, whoever reads it: only its quantities and links differ from medium to medium. */
const parsedOnce = (text: string): string =>
  plainLine.test(text) ? asParagraph(text) : parsed(text)

/** Markdown with named quantities as HTML blocks. */
export function blockHtml(text: string, context: TextContext): Html {
  const known = context.cache.get(text)
  if (known !== undefined) return html(known)
  const rendered = finish(parsedOnce(text), context)
  context.cache.set(text, rendered)
  return html(rendered)
}

/** The same for one line: without the paragraph around it. */
export const lineHtml = (text: string, context: TextContext): Html =>
  html(
    blockHtml(text, context)
      .toString()
      .replace(/^<p>([\s\S]*)<\/p>$/, '$1'),
  )

/** Plain words of a text, for attributes, bookmarks and window titles. */
export const plainWords = (
  text: string,
  quantities: Readonly<Record<string, NamedQuantity>>,
): string =>
  text
    .replace(placeholder, (_, name: string) => quantities[name]?.text ?? name)
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`]/g, '')
