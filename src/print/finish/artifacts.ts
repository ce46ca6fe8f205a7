import { unmarkDecoration } from '../content/unmark-decoration.ts'
import { wrapArtifacts } from '../content/wrap-artifacts.ts'
import { entry, lookUp, setEntry } from '../pdf/dictionaries.ts'
import { removeObject, reserveNumber, resolve, setObject } from '../pdf/documents.ts'
import type { PdfDocument, PdfReference } from '../pdf/kinds.ts'
import { asArray, asReference, itemsOf } from '../pdf/objects.ts'
import { type PdfPage, pagesOf } from '../pdf/pages.ts'
import { contentStream, streamText } from '../pdf/streams.ts'

/** The content of a page as one stream, to be written anew. */
type OneStream = {
  readonly reference: PdfReference
  readonly text: string
  /** Streams that it replaces. */
  readonly replaced: readonly PdfReference[]
}

/** @returns nothing where a page has no content that can be read. */
function asOneStream(document: PdfDocument, { dictionary }: PdfPage): OneStream | undefined {
  const contents = entry(dictionary, 'Contents')
  // Laying fields over a page turns its one stream into a list.
  const list = asArray(lookUp(dictionary, 'Contents'))
  const streams = list ? itemsOf(list) : [contents]
  // The streams of a list may be shared between pages.
  const isAlone = streams.length === 1
  const reference = isAlone ? asReference(streams[0]) : reserveNumber(document)
  const texts = streams.flatMap((s) => streamText(resolve(document, s)) ?? [])
  if (!reference || texts.length < streams.length) return undefined
  setEntry(dictionary, 'Contents', reference)
  const replaced = isAlone ? [] : streams.flatMap((s) => asReference(s) ?? [])
  return { reference, text: texts.join('\n'), replaced }
}

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
  const replaced = new Set<PdfReference>()
  for (const page of pagesOf(document)) {
    const whole = asOneStream(document, page)
    if (!whole) continue
    for (const stream of whole.replaced) replaced.add(stream)
    const { content, removed } = unmarkDecoration(whole.text, (mcid) =>
      isKept(page.reference, mcid),
    )
    decoration.set(page.reference, new Set(removed))
    setObject(document, whole.reference, contentStream(document, wrapArtifacts(content)))
  }
  for (const stream of replaced) removeObject(document, stream)
  return decoration
}
