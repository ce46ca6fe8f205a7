import { createHash } from 'node:crypto'
import { decodePDFRawStream, PDFArray, PDFDict, type PDFDocument, PDFName, type PDFPage, PDFRawStream } from '@cantoo/pdf-lib'

/** Names of a page's fonts by what its content calls them; a subset's letters before the plus are chance. */
function fontNames(page: PDFPage): ReadonlyMap<string, string> {
  const fonts = page.node.Resources()?.lookupMaybe(PDFName.of('Font'), PDFDict)
  return new Map((fonts?.keys() ?? []).map((key) => [key.decodeText(), (fonts?.lookupMaybe(key, PDFDict)?.lookupMaybe(PDFName.of('BaseFont'), PDFName)?.decodeText() ?? '').replace(/^[A-Z]{6}\+/, '')]))
}

function contentOf(page: PDFPage): string {
  const contents = page.node.Contents()
  const streams = contents instanceof PDFArray ? contents.asArray().map((ref) => page.doc.context.lookup(ref)) : [contents]
  return streams.map((s) => (s instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(s).decode()).toString('latin1') : '')).join('\n')
}

/**
 * What makes a page differ from another for its reader: all that is tagged, and rules and grounds. Text outside any tag is
 * head and foot, whose date and revision change with every build; that alone is no reason to exchange a page.
 */
function fingerprint(page: PDFPage): string {
  const fonts = fontNames(page)
  const hash = createHash('sha256')
  let [depth, inText] = [0, false]
  for (const line of contentOf(page).split('\n')) {
    const operator = line.trim().split(/\s+/).at(-1) ?? ''
    if (operator === 'BT') inText = true
    const begins = /(?:BDC|BMC)$/.test(operator)
    if (begins) depth++
    if (operator === 'EMC') depth--
    // Numbers of tags, names of graphics states and the places of head and foot say nothing to a reader.
    const counts = !begins && operator !== 'EMC' && operator !== 'gs' && (depth > 0 || !inText)
    if (counts) hash.update(`${line.replace(/\/(\w+)(?=[\s\S]*Tf$)/, (_, name: string) => `/${fonts.get(name) ?? name}`)}\n`)
    if (operator === 'ET') inText = false
  }
  return hash.digest('hex').slice(0, 16)
}

/** One fingerprint for each page of a document as the browser printed it. */
export const pageFingerprints = (document: PDFDocument): readonly string[] => document.getPages().map(fingerprint)
