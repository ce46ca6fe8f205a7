import { unmarkDecoration } from '../content/unmark-decoration.ts'
import { wrapArtifacts } from '../content/wrap-artifacts.ts'
import { referenceAt } from '../pdf/dictionaries.ts'
import { resolve, setObject } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { pagesOf } from '../pdf/pages.ts'
import { contentStream, streamText } from '../pdf/streams.ts'

/**
 * Wraps everything on every page that is painted outside any tag as an artifact, decoration that is
 * tagged as content included.
 * @param isKept Whether marked content of a page says something although it shows no words.
 * @returns by page the numbers of the marked content that has become an artifact.
 */
export function markArtifacts(
  document: PdfDocument,
  isKept: (page: PdfReference, mcid: number) => boolean,
): ReadonlyMap<PdfReference, ReadonlySet<number>> {
  const decoration = new Map<PdfReference, ReadonlySet<number>>()
  for (const page of pagesOf(document)) {
    // The browser writes what is on a page as one stream.
    const stream = referenceAt(page.dictionary, 'Contents')
    const text = streamText(resolve(document, stream))
    if (!stream || text === undefined) continue
    const isPicture = (mcid: number): boolean => isKept(page.reference, mcid)
    const { content, removed } = unmarkDecoration(text.split('\n'), isPicture)
    decoration.set(page.reference, new Set(removed))
    setObject(document, stream, contentStream(document, wrapArtifacts(content).join('\n')))
  }
  return decoration
}
