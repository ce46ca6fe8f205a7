import { deflateSync } from 'node:zlib'
import { PDFArray, type PDFDocument, PDFName, PDFRawStream, PDFRef } from '@cantoo/pdf-lib'
import { beginsMarked, operatorOf } from '../content/operator.ts'
import { streamText } from '../content/stream-text.ts'
import { unmarkDecoration } from './decoration.ts'

const paint = new Set(['f', 'F', 'f*', 'S', 's', 'B', 'B*', 'b', 'b*', 'n'])
const shape = new Set(['m', 'l', 'c', 'v', 'y', 'h', 're', 'W', 'W*'])

/**
 * Wraps everything that is painted outside any tag (rules, backgrounds, running heads) as an
 * artifact, so that readers for the blind pass it over. The browser writes one operator a line.
 */
export function wrapArtifacts(content: string): string {
  const out: string[] = []
  let depth = 0
  let held: string[] = []
  let holding: 'text' | 'path' | undefined
  const close = (wrap: boolean): void => {
    out.push(...(wrap ? ['/Artifact BMC', ...held, 'EMC'] : held))
    held = []
    holding = undefined
  }
  for (const line of content.split('\n')) {
    const operator = operatorOf(line)
    if (beginsMarked(operator)) depth++
    if (operator === 'EMC') depth--
    if (depth > 0 || operator === 'EMC') {
      out.push(line)
      continue
    }
    if (holding) {
      held.push(line)
      if (holding === 'text' && operator === 'ET') close(true)
      // A path that only clips paints nothing.
      else if (holding === 'path' && paint.has(operator)) close(operator !== 'n')
      continue
    }
    if (operator === 'BT' || shape.has(operator)) {
      holding = operator === 'BT' ? 'text' : 'path'
      held = [line]
    } else if (operator === 'Do' || operator === 'sh') out.push('/Artifact BMC', line, 'EMC')
    else out.push(line)
  }
  return [...out, ...held].join('\n')
}

/**
 * Does so on every page, decoration that is tagged as content included.
 * @param isKept Whether marked content of a page says something although it shows no words.
 * @returns by page the numbers of the marked content that has become an artifact.
 */
export function markArtifacts(
  document: PDFDocument,
  isKept: (page: PDFRef, mcid: number) => boolean,
): ReadonlyMap<PDFRef, ReadonlySet<number>> {
  const decoration = new Map<PDFRef, ReadonlySet<number>>()
  const replaced = new Set<PDFRef>()
  for (const page of document.getPages()) {
    const contents = page.node.get(PDFName.of('Contents'))
    const whole = document.context.lookup(contents)
    // Laying fields over a page turns its one stream into a list.
    const refs = whole instanceof PDFArray ? whole.asArray() : [contents]
    // The streams of a list may be shared between pages.
    const ref = refs.length === 1 ? refs[0] : document.context.nextRef()
    const texts = refs.flatMap((r) => streamText(document.context.lookup(r)) ?? [])
    if (!(ref instanceof PDFRef) || texts.length < refs.length) continue
    page.node.set(PDFName.of('Contents'), ref)
    if (refs.length > 1) for (const r of refs) if (r instanceof PDFRef) replaced.add(r)
    const { content, removed } = unmarkDecoration(texts.join('\n'), (mcid) =>
      isKept(page.ref, mcid),
    )
    decoration.set(page.ref, new Set(removed))
    const data = deflateSync(Buffer.from(wrapArtifacts(content), 'latin1'))
    document.context.assign(
      ref,
      PDFRawStream.of(document.context.obj({ Length: data.length, Filter: 'FlateDecode' }), data),
    )
  }
  for (const ref of replaced) document.context.delete(ref)
  return decoration
}
