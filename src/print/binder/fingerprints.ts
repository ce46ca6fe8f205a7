import { createHash } from 'node:crypto'
import { PDFArray, PDFDict, type PDFDocument, PDFName, type PDFPage } from '@cantoo/pdf-lib'
import { beginsMarked, operatorOf } from '../content/operator.ts'
import { streamText } from '../content/stream-text.ts'

/**
 * Names of a page's fonts by what its content calls them; a subset's letters before the plus are
 * chance.
 */
function fontNames(page: PDFPage): ReadonlyMap<string, string> {
  const fonts = page.node.Resources()?.lookupMaybe(PDFName.of('Font'), PDFDict)
  return new Map(
    (fonts?.keys() ?? []).map((key) => [
      key.decodeText(),
      (
        fonts
          ?.lookupMaybe(key, PDFDict)
          ?.lookupMaybe(PDFName.of('BaseFont'), PDFName)
          ?.decodeText() ?? ''
      ).replace(/^[A-Z]{6}\+/, ''),
    ]),
  )
}

function contentOf(page: PDFPage): string {
  const contents = page.node.Contents()
  const streams =
    contents instanceof PDFArray
      ? contents.asArray().map((ref) => page.doc.context.lookup(ref))
      : [contents]
  return streams.map((s) => streamText(s) ?? '').join('\n')
}

/**
 * What makes a page differ from another for its reader: all that is tagged, and rules and grounds.
 * Text outside any tag is head and foot, whose date and revision change with every build; that
 * alone is no reason to exchange a page.
 */
function fingerprint(page: PDFPage): string {
  const fonts = fontNames(page)
  const counted: string[] = []
  let [depth, inText] = [0, false]
  for (const line of contentOf(page).split('\n')) {
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
export const pageFingerprints = (document: PDFDocument): readonly string[] =>
  document.getPages().map(fingerprint)
