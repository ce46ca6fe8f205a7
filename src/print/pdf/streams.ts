import { deflateSync, inflateSync } from 'node:zlib'
import { entry, nameAt } from './dictionaries.ts'
import type { LiteralRecord, PdfDictionary, PdfDocument, PdfObject, PdfStream } from './kinds.ts'
import { dictionary } from './make-objects.ts'
import { inside, isA, outside, type Stream } from './values.ts'

/** What a stream says of itself; nothing for an object that is not one. */
export function streamDictionary(object: PdfObject | undefined): PdfDictionary | undefined {
  const stream = inside(object)
  return isA(stream, 'stream') ? outside(stream.dictionary) : undefined
}

/**
 * The bytes of a stream, decoded; undefined for an object that is not one.
 * @throws Error for a filter that neither the browser nor we use for text.
 */
export function streamBytes(object: PdfObject | undefined): Uint8Array | undefined {
  const [stream, about] = [inside(object), streamDictionary(object)]
  if (!isA(stream, 'stream')) return undefined
  if (entry(about, 'Filter') === undefined) return stream.bytes
  if (nameAt(about, 'Filter') === 'FlateDecode' && entry(about, 'DecodeParms') === undefined)
    return inflateSync(stream.bytes)
  throw new Error(`a stream is packed as ${nameAt(about, 'Filter')}`)
}

/** What a content stream says, one character a byte; undefined for an object that is not one. */
export function streamText(object: PdfObject | undefined): string | undefined {
  const bytes = streamBytes(object)
  return bytes && Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1')
}

/** A stream whose bytes are written as they are. */
export function rawStream(
  document: PdfDocument,
  bytes: Uint8Array,
  entries: LiteralRecord = {},
): PdfStream {
  const about = inside(dictionary(document, entries))
  const stream: Stream = { kind: 'stream', dictionary: about, bytes }
  return stream as unknown as PdfStream
}

/** A compressed stream of content. */
export function contentStream(
  document: PdfDocument,
  text: string,
  entries: LiteralRecord = {},
): PdfStream {
  const bytes = deflateSync(Buffer.from(text, 'latin1'))
  return rawStream(document, bytes, { ...entries, Length: bytes.length, Filter: 'FlateDecode' })
}
