import { createHash } from 'node:crypto'
import { beginsMarked, operatorOf } from '../content/operator.ts'
import { dictionaryAt, entriesOf, nameAt } from '../pdf/dictionaries.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { contentOf, type PdfPage, pagesOf, resourcesOf } from '../pdf/pages.ts'

/**
 * Names of a page's fonts by what its content calls them; a subset's letters before the plus are
 * chance.
 */
function fontNames(page: PdfPage): ReadonlyMap<string, string> {
  const fonts = dictionaryAt(resourcesOf(page), 'Font')
  return new Map(
    entriesOf(fonts).map(([called]) => {
      const name = nameAt(dictionaryAt(fonts, called), 'BaseFont') ?? ''
      return [called, name.replace(/^[A-Z]{6}\+/, '')]
    }),
  )
}

/**
 * What makes a page differ from another for its reader: all that is tagged, and rules and grounds.
 * Text outside any tag is head and foot, whose date and revision change with every build; that
 * alone is no reason to exchange a page.
 */
function fingerprint(document: PdfDocument, page: PdfPage): string {
  const fonts = fontNames(page)
  const counted: string[] = []
  let [depth, inText] = [0, false]
  for (const line of contentOf(document, page).split('\n')) {
    const operator = operatorOf(line)
    if (operator === 'BT') inText = true
    const begins = beginsMarked(operator)
    if (begins) depth++
    if (operator === 'EMC') depth--
    // Numbers of tags, names of graphics states and the places of head and foot say nothing to a
    // reader.
    const counts = !begins && operator !== 'EMC' && operator !== 'gs' && (depth > 0 || !inText)
    if (counts)
      counted.push(
        operator === 'Tf'
          ? line.replace(/\/(\w+)/, (_, name: string) => `/${fonts.get(name) ?? name}`)
          : line,
      )
    if (operator === 'ET') inText = false
  }
  return createHash('sha256').update(counted.join('\n')).digest('hex').slice(0, 16)
}

/** One fingerprint for each page of a document as the browser printed it. */
export const pageFingerprints = (document: PdfDocument): readonly string[] =>
  pagesOf(document).map((page) => fingerprint(document, page))
