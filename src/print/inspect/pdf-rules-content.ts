import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFName,
  PDFNumber,
  type PDFObject,
  type PDFPage,
  PDFRawStream,
  PDFRef,
  PDFStream,
} from '@cantoo/pdf-lib'
import type { Structure } from '../finish/structure/tree.ts'
import { treePairs } from '../merge/trees.ts'
import { scanContent } from './pdf-rules-scan.ts'

function bytesOf(stream: PDFObject | undefined): Uint8Array {
  if (stream instanceof PDFRawStream) return decodePDFRawStream(stream).decode()
  return stream instanceof PDFStream ? stream.getContents() : new Uint8Array()
}

function contentOf(page: PDFPage): string {
  const contents = page.node.Contents()
  const streams =
    contents instanceof PDFArray
      ? contents.asArray().map((ref) => page.doc.context.lookup(ref))
      : [contents]
  // Streams of one page are read as if white space stood between them.
  return streams.map((s) => Buffer.from(bytesOf(s)).toString('latin1')).join('\n')
}

function mcidOf(page: PDFPage, properties: string): number | undefined {
  const list = page.node
    .Resources()
    ?.lookupMaybe(PDFName.of('Properties'), PDFDict)
    ?.lookup(PDFName.of(properties))
  const mcid = list instanceof PDFDict ? list.get(PDFName.of('MCID')) : undefined
  return mcid instanceof PDFNumber ? mcid.asNumber() : undefined
}

const few = (list: readonly unknown[]): string =>
  `${list.slice(0, 5).join(', ')}${list.length > 5 ? ` and ${list.length - 5} more` : ''}`

/**
 * Everything painted is content or an artifact, and content and structure know each other (ISO
 * 14289-1, 7.1 and 7.2; ISO 32000-1, 14.7.4.4).
 */
export function contentFaults(document: PDFDocument, structure: Structure): string[] {
  const parents = new Map(
    treePairs(structure.root.lookupMaybe(PDFName.of('ParentTree'), PDFDict), 'Nums').map(
      ([key, value]) => [key instanceof PDFNumber ? key.asNumber() : -1, value],
    ),
  )
  const claimed = new Map<PDFRef, Map<number, PDFRef>>()
  const faults: string[] = []
  for (const element of structure.all) {
    for (const kid of element.kids) {
      if (kid.kind !== 'content') continue
      const of = claimed.get(kid.page) ?? new Map<number, PDFRef>()
      claimed.set(kid.page, of)
      if (of.has(kid.mcid))
        faults.push(`content ${kid.mcid} belongs to two elements: ${element.type}`)
      of.set(kid.mcid, element.ref)
    }
  }
  document.getPages().forEach((page, i) => {
    const say = (fault: string): number => faults.push(`page ${i + 1}: ${fault}`)
    const scan = scanContent(contentOf(page), (properties) => mcidOf(page, properties))
    for (const [operator, times] of scan.unmarked)
      say(`${times} times ${operator} paints outside content and artifacts`)
    if (scan.mixed.length > 0) say(`artifact and content inside one another: ${few(scan.mixed)}`)
    if (!scan.balanced) say('marked content is not closed, or closed twice')
    const key = page.node.get(PDFName.of('StructParents'))
    const list =
      key instanceof PDFNumber ? document.context.lookup(parents.get(key.asNumber())) : undefined
    const known = list instanceof PDFArray ? list.asArray() : []
    const own = claimed.get(page.ref) ?? new Map<number, PDFRef>()
    const there = new Set(scan.mcids)
    if (there.size < scan.mcids.length) say('a number of marked content is used twice')
    const lost = [...there].filter((mcid) => !own.has(mcid))
    if (lost.length > 0) say(`content in no element: ${few(lost)}`)
    const strange = [...there].filter((mcid) => own.has(mcid) && known[mcid] !== own.get(mcid))
    if (strange.length > 0)
      say(`content whose parent in the parent tree is not its element: ${few(strange)}`)
    const missing = [...own.keys()].filter((mcid) => !there.has(mcid))
    if (missing.length > 0) say(`elements with content that is not on the page: ${few(missing)}`)
    const idle = known.flatMap((ref, mcid) =>
      ref instanceof PDFRef && own.get(mcid) !== ref && !there.has(mcid) ? [mcid] : [],
    )
    if (idle.length > 0) say(`parent tree with content that no element has: ${few(idle)}`)
  })
  return faults
}
