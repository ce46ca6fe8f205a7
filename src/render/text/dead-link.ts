import { placeAt, problemAt } from '../../read/source-file.ts'
import { blame } from './template-fault.ts'
import { type TemplateSet, templateFile } from './templates.ts'

/** A link that leads to nothing. */
type DeadLink = RangeError & { readonly href: string }

export const deadLink = (href: string, message: string): DeadLink =>
  Object.assign(new RangeError(message), { href })

const isDeadLink = (error: unknown): error is DeadLink =>
  error instanceof RangeError && 'href' in error

/** A link as a template writes it, with what is filled into it left open. */
type Written = {
  readonly name: string
  readonly text: string
  readonly at: number
  readonly length: number
  /** What stands in it whatever is filled in. */
  readonly fixed: readonly string[]
}

const written = /\b(?:href|data-page-of)="((?:[^"{]|\{\{[^}]*\}\})*)"/g

function linksIn(templates: TemplateSet): readonly Written[] {
  return Object.entries(templates).flatMap(([name, text]) =>
    typeof text === 'string'
      ? [...text.matchAll(written)].map(({ index, 0: all, 1: href = '' }) => ({
          name,
          text,
          at: index,
          length: all.length,
          // A list of places names them without the sign of a link.
          fixed: `${all.startsWith('href') ? '' : '#'}${href}`.split(/\{\{[^}]*\}\}/),
        }))
      : [],
  )
}

/** Whether a link can have come of what a template writes: its fixed pieces, one after the other. */
function canBe(href: string, { fixed }: Written): boolean {
  const [first = '', ...rest] = fixed
  const last = rest.pop()
  if (last === undefined) return href === first
  if (!href.startsWith(first) || !href.slice(first.length).endsWith(last)) return false
  let from = first.length
  for (const piece of rest) {
    const at = href.indexOf(piece, from)
    if (at < 0) return false
    from = at + piece.length
  }
  return from + last.length <= href.length
}

const lengthOf = ({ fixed }: Written): number => fixed.reduce((sum, piece) => sum + piece.length, 0)

/**
 * Makes something of filled templates; where it ends on a link that leads to nothing, that is known as
 * the fault of the template which writes most of it.
 */
export function blamingLinks<T>(templates: TemplateSet, make: () => T): T {
  try {
    return make()
  } catch (error) {
    const [first] = isDeadLink(error)
      ? linksIn(templates)
          .filter((link) => canBe(error.href, link))
          .sort((a, b) => lengthOf(b) - lengthOf(a) || a.fixed.length - b.fixed.length)
      : []
    if (first && error instanceof Error) {
      const file = templateFile(first.name, first.text)
      const place = placeAt(file, first.at, first.length)
      blame(error, problemAt(file, place, 'ref/missing', error.message))
    }
    throw error
  }
}
