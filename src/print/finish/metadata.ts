import { createHash } from 'node:crypto'
import { startOf } from '../../model/day.ts'
import { escapeHtml } from '../../render/text/escape-html.ts'
import { setEntry } from '../pdf/dictionaries.ts'
import { addObject, catalogOf } from '../pdf/documents.ts'
import { setFileIdentifier, writeInformation } from '../pdf/information.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import { rawStream } from '../pdf/streams.ts'
import type { PdfAbout } from './finish-pdf.ts'

/** The same facts as in the document information, in the form of ISO 16684-1 (XMP). */
function xmp(about: PdfAbout): string {
  const date = `${about.date}T00:00:00Z`
  return `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeHtml(about.title)}</rdf:li></rdf:Alt></dc:title><dc:creator><rdf:Seq><rdf:li>${escapeHtml(about.author)}</rdf:li></rdf:Seq></dc:creator><dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escapeHtml(about.subject)}</rdf:li></rdf:Alt></dc:description><dc:language><rdf:Bag><rdf:li>${about.lang}</rdf:li></rdf:Bag></dc:language><pdf:Keywords>${escapeHtml(about.keywords.join(', '))}</pdf:Keywords><pdf:Producer>${escapeHtml(about.creator)}</pdf:Producer><xmp:CreatorTool>${escapeHtml(about.creator)}</xmp:CreatorTool><xmp:CreateDate>${date}</xmp:CreateDate><xmp:ModifyDate>${date}</xmp:ModifyDate></rdf:Description></rdf:RDF></x:xmpmeta>
<?xpacket end="w"?>`
}

/**
 * Title, author, subject, keywords, language and dates, both as document information and as XMP.
 */
export function writeMetadata(document: PdfDocument, about: PdfAbout): void {
  writeInformation(document, { ...about, date: startOf(about.date) })
  const stream = rawStream(document, new TextEncoder().encode(xmp(about)), {
    Type: 'Metadata',
    Subtype: 'XML',
  })
  setEntry(catalogOf(document), 'Metadata', addObject(document, stream))
}

/** A file identifier made from what went in, instead of from the moment of printing. */
export const fixIdentity = (document: PdfDocument, seed: string): void =>
  setFileIdentifier(document, createHash('md5').update(seed).digest('hex'))
