import { deflateSync, inflateSync } from 'node:zlib'
import { decodePDFRawStream, PDFContentStream, PDFRawStream, PDFStream } from '@cantoo/pdf-lib'
import { entry, nameAt } from './dictionaries.ts'
import type { LiteralRecord, PdfDictionary, PdfDocument, PdfObject, PdfStream } from './kinds.ts'
import { ours, theirs } from './library.ts'
import { dictionary } from './make-objects.ts'

/** What a stream says of itself; nothing for an object that is not one. */
export function streamDictionary(object: PdfObject | undefined): PdfDictionary | undefined {
  const stream = theirs(object)
  return stream instanceof PDFStream ? ours(stream.dict) : undefined
}

/** Node's own decoder takes a fifth of the time of the library's, which knows all filters. */
function decoded(stream: PDFRawStream): Uint8Array {
  const about = streamDictionary(ours(stream))
  const plain =
    nameAt(about, 'Filter') === 'FlateDecode' && entry(about, 'DecodeParms') === undefined
  return plain ? inflateSync(stream.contents) : decodePDFRawStream(stream).decode()
}

/** The bytes of a stream, decoded; undefined for an object that is not one. */
export function streamBytes(object: PdfObject | undefined): Uint8Array | undefined {
  const stream = theirs(object)
  if (stream instanceof PDFRawStream) return decoded(stream)
  return stream instanceof PDFContentStream ? stream.getUnencodedContents() : undefined
}

/** What a content stream says, one character a byte; undefined for an object that is not one. */
export function streamText(object: PdfObject | undefined): string | undefined {
  const bytes = streamBytes(object)
  return bytes && Buffer.from(bytes).toString('latin1')
}

/** A stream whose bytes are written as they are. */
export const rawStream = (
  document: PdfDocument,
  bytes: Uint8Array,
  entries: LiteralRecord = {},
): PdfStream => ours(PDFRawStream.of(theirs(dictionary(document, entries)), bytes))

/** A compressed stream of content. */
export function contentStream(
  document: PdfDocument,
  text: string,
  entries: LiteralRecord = {},
): PdfStream {
  const bytes = deflateSync(Buffer.from(text, 'latin1'))
  return rawStream(document, bytes, { ...entries, Length: bytes.length, Filter: 'FlateDecode' })
}
